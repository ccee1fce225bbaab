/** Sentences of the help sheet. */

export const help = {
  title: 'Keys and help',
  close: 'Close',
  model: 'On the model',
  rail: 'On the stages',
  tables: 'In the tables',
  still: 'No moving pictures',
  stillAdd: 'The camera jumps instead of flying, layers change at once. Follows the setting of your device until you choose here.',
  keys: {
    model: [
      ['Arrow keys', 'turn the model'],
      ['Shift + arrow keys', 'move it'],
      ['+ and −', 'nearer, farther'],
      ['Home, P, S', 'whole model, from above, from the side'],
      ['Click or tap', 'core log of that place'],
      ['Escape', 'clear the picked place'],
    ],
    rail: [
      ['Left, right arrow', 'previous, next stage'],
      ['Home, End', 'first stage, finished garden'],
    ],
    tables: [
      ['Tab', 'next control'],
      ['Arrow keys', 'on the register: next sheet'],
      ['Enter', 'go to the bay, finding, zone or cell'],
    ],
  } as Readonly<Record<'model' | 'rail' | 'tables', readonly (readonly [string, string])[]>>,
} as const;
