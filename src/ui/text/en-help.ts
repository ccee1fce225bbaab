/** Sentences of the help sheet. */

export const help = {
  title: 'Keys and help',
  close: 'Close',
  model: 'On the model',
  rail: 'On the stages',
  tables: 'In the tables',
  plan: 'In the plan editor',
  walk: 'In the walkthrough',
  still: 'No moving pictures',
  stillAdd: 'The camera jumps instead of flying, layers change at once. Follows the setting of your device until you choose here.',
  keys: {
    model: [
      ['Drag, one finger', 'turn the model'],
      ['Shift + drag, right button, two fingers', 'move it'],
      ['Wheel, pinch', 'nearer, farther'],
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
    plan: [
      ['Drag, arrow keys, space + drag', 'move the plan'],
      ['Wheel, pinch, + and −, 0', 'nearer, farther, whole plan'],
      ['Click again', 'what lies below'],
      ['Shift + click, Shift + drag', 'choose another one too, all in a box'],
      ['Control + A', 'choose all in view'],
      ['Drag a corner, a side, the cross on it', 'move it, put in a corner'],
      ['Shift + arrow keys, Delete', 'move what is chosen by a step, remove it'],
      ['Alt while pointing', 'catch nothing'],
      ['Enter, Backspace, Escape', 'finish, take back last point, cancel (a drag too)'],
    ],
    walk: [
      ['Left, right arrow, page keys, clicker', 'previous, next view'],
      ['1 to 9', 'that view'],
      ['Click or tap', 'what lies under that place'],
      ['W, A, S, D, arrow keys', 'while walking: where to go and look'],
      ['Escape', 'one step back, then out of the walkthrough'],
    ],
  } as Readonly<Record<'model' | 'rail' | 'tables' | 'plan' | 'walk', readonly (readonly [string, string])[]>>,
} as const;
