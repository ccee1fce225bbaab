/** Saves the take-off as a file on this device. */

import { useState } from 'react';
import type { ExportLanguage } from '../../model/engine.ts';
import { saveFile } from '../save-file.ts';
import type { TakeOffKind } from '../text/en-sheets.ts';
import { t } from '../text/text.ts';
import { useScene } from '../use-stores.ts';

interface Choice {
  readonly kind: TakeOffKind;
  readonly language: ExportLanguage;
}

const CHOICES: readonly Choice[] = [
  { kind: 'take-off csv', language: 'en' },
  { kind: 'take-off csv', language: 'de' },
  { kind: 'take-off xlsx', language: 'en' },
  { kind: 'take-off xlsx', language: 'de' },
];

export function SaveButtons() {
  const exportFile = useScene((state) => state.exportFile);
  const [said, setSaid] = useState<string>('');
  const onSave = async ({ kind, language }: Choice) => {
    try {
      const file = await exportFile(kind, language);
      saveFile(file);
      setSaid(t.takeoff.saved(file.name));
    } catch (error) {
      setSaid(t.takeoff.notSaved(error instanceof Error ? error.message : String(error)));
    }
  };
  return (
    <>
      {CHOICES.map((choice) => (
        <button key={`${choice.kind} ${choice.language}`} type="button" className="button" onClick={() => void onSave(choice)}>
          {t.takeoff.save(choice.kind, choice.language)}
        </button>
      ))}
      <p role="status" className="small sheet-said">
        {said}
      </p>
    </>
  );
}
