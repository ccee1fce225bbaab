/** Everything that can be printed, behind one button. */

import { SHEETS } from '../../store/sheet-view.ts';
import { Menu } from '../parts/Menu.tsx';
import { printWords } from '../text/print-words.ts';
import { useScene, useView } from '../use-stores.ts';

export function SheetsMenu() {
  const open = useScene((state) => state.snapshot !== null);
  const words = printWords(useView((state) => state.language));
  const section = useView((state) => state.section);
  const showSheet = useView((state) => state.showSheet);
  if (!open) return null;
  return (
    <Menu label={words.menu}>
      {(close) => (
        <ul>
          {SHEETS.map((sheet) => (
            <li key={sheet}>
              <button
                type="button"
                className="demo"
                disabled={sheet === 'section' && section === null}
                onClick={() => {
                  close();
                  showSheet(sheet);
                }}
              >
                {words.sheet[sheet]}
                <span className="small block">{sheet === 'section' && section === null ? words.noSection : words.says[sheet]}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </Menu>
  );
}
