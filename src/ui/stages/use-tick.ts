/** A tick that shows at once what was wished; once the wish is done or refused, what is so. */

import { type ChangeEvent, useState } from 'react';

export function useTick(is: boolean, wish: (on: boolean) => Promise<unknown>) {
  const [wished, setWished] = useState<boolean | null>(null);
  return {
    checked: wished ?? is,
    waiting: wished !== null,
    onChange: async ({ target: { checked } }: ChangeEvent<HTMLInputElement>) => {
      setWished(checked);
      await wish(checked);
      setWished(null);
    },
  };
}
