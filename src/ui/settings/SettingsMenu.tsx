/** Units of reading and typing, look of the page, motion. */

import { type ReactNode, useRef, useState } from 'react';
import { LENGTH_UNITS, LOAD_UNITS } from '../../model/shown-units.ts';
import { THEMES } from '../../store/walk.ts';
import { Icon } from '../parts/Icon.tsx';
import { t } from '../text/text.ts';
import { useView } from '../use-stores.ts';
import { keepTheme } from '../use-theme.ts';
import { StillChoice } from './StillChoice.tsx';

export function SettingsMenu() {
  const dialog = useRef<HTMLDialogElement>(null);
  const [open, setOpen] = useState(false);
  const onOpen = () => {
    setOpen(true);
    dialog.current?.showModal();
  };
  return (
    <>
      <button
        type="button"
        className="icon-button"
        aria-haspopup="dialog"
        aria-label={t.settings.button}
        title={t.settings.button}
        onClick={onOpen}
      >
        <Icon name="gear" />
      </button>
      <dialog ref={dialog} className="sheet dialog" aria-labelledby="settings-title" onClose={() => setOpen(false)}>
        <h2 id="settings-title" className="sheet-title">
          {t.settings.title}
        </h2>
        {open && <Choices />}
        <button type="button" className="button" onClick={() => dialog.current?.close()}>
          {t.settings.close}
        </button>
      </dialog>
    </>
  );
}

function Choices() {
  const units = useView((state) => state.units);
  const setUnits = useView((state) => state.setUnits);
  const theme = useView((state) => state.theme);
  const setTheme = useView((state) => state.setTheme);
  return (
    <>
      <Row name="unit-load" title={t.settings.loads} choices={LOAD_UNITS} chosen={units.load} onChoose={(load) => setUnits({ load })} />
      <Row
        name="unit-length"
        title={t.settings.lengths}
        choices={LENGTH_UNITS}
        chosen={units.length}
        label={(unit) => t.settings.lengthNames[unit]}
        onChoose={(length) => setUnits({ length })}
      />
      <p className="small">{t.settings.unitsSay}</p>
      <Row
        name="theme"
        title={t.settings.theme}
        choices={THEMES}
        chosen={theme}
        label={(one) => t.settings.themes[one]}
        onChoose={(chosen) => {
          setTheme(chosen);
          keepTheme(chosen);
        }}
      />
      <p className="small">{t.settings.themesSay}</p>
      <StillChoice />
    </>
  );
}

interface RowProps<T extends string> {
  readonly name: string;
  readonly title: string;
  readonly choices: readonly T[];
  readonly chosen: T;
  readonly label?: (choice: T) => ReactNode;
  readonly onChoose: (choice: T) => void;
}

function Row<T extends string>({ name, title, choices, chosen, label = (choice) => choice, onChoose }: RowProps<T>) {
  return (
    <fieldset className="segments">
      <legend>{title}</legend>
      {choices.map((choice) => (
        <label key={choice} className="segment">
          <input type="radio" name={name} checked={choice === chosen} onChange={() => onChoose(choice)} />
          <span>{label(choice)}</span>
        </label>
      ))}
    </fieldset>
  );
}
