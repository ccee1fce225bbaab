/** What can be chosen for a print sheet, and printing it. */

import type { ReactNode } from 'react';
import { LANGUAGES, type Language } from '../../model/language.ts';
import type { SheetName } from '../../store/sheet-view.ts';
import { heapMaterials } from '../facts/heap-board.ts';
import { Icon } from '../parts/Icon.tsx';
import { ALL_MATERIALS, heapScales } from './heap-blocks.tsx';
import type { SheetContext } from './sheet-context.ts';

export interface SheetChoices {
  readonly language: Language;
  readonly paper: 'A4' | 'A3';
  /** Null: the one shown in the model. */
  readonly stage: number | null;
  /** Null: those that matter most in the stage. */
  readonly material: string | null;
  /** Null: as large as fits. */
  readonly scale: number | null;
}

interface Props {
  readonly sheet: SheetName;
  readonly on: SheetContext;
  readonly choices: SheetChoices;
  readonly pages: number;
  readonly onChoose: (choices: SheetChoices) => void;
  readonly onClose: () => void;
  /** How the preview is seen. */
  readonly children: ReactNode;
}

/** Each in its own language, so that whoever needs it can read it. */
const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' };

export function SheetBar({ sheet, on, choices, pages, onChoose, onClose, children }: Props) {
  const { words, stage } = on;
  const choose = (change: Partial<SheetChoices>) => onChoose({ ...choices, ...change });
  const ofStage = (sheet === 'heaps' || sheet === 'talk') && stage !== null;
  return (
    <header className="sheet-bar">
      <h2 className="panel-title" role="status">
        {pages === 0 ? words.making : words.preview(words.sheet[sheet], pages)}
      </h2>
      <div className="sheet-choices">
        {sheet === 'engineer' && (
          <Choice name={words.paper} value={choices.paper} onChange={(value) => choose({ paper: value === 'A3' ? 'A3' : 'A4' })}>
            {(['A4', 'A3'] as const).map((paper) => (
              <option key={paper} value={paper}>
                {words.paperName(paper)}
              </option>
            ))}
          </Choice>
        )}
        {ofStage && <StageChoice on={on} stage={stage} onChange={(to) => choose({ stage: to })} />}
        {sheet === 'heaps' && <HeapChoices on={on} choices={choices} choose={choose} />}
        {/* The drawing of a section is in the language of the page. */}
        {sheet !== 'section' && (
          <Choice name={words.language} value={choices.language} onChange={(value) => choose({ language: value === 'de' ? 'de' : 'en' })}>
            {LANGUAGES.map((one) => (
              <option key={one} value={one} lang={one}>
                {LANGUAGE_NAMES[one]}
              </option>
            ))}
          </Choice>
        )}
      </div>
      <div className="sheet-actions">
        {children}
        <button type="button" className="button button-main" onClick={() => window.print()}>
          {words.print}
        </button>
        <button type="button" className="icon-button" aria-label={words.close} title={words.close} onClick={onClose}>
          <Icon name="close" />
        </button>
      </div>
    </header>
  );
}

interface StageProps {
  readonly on: SheetContext;
  readonly stage: number;
  readonly onChange: (stage: number) => void;
}

function StageChoice({ on: { snapshot, words }, stage, onChange }: StageProps) {
  return (
    <Choice name={words.stage} value={String(stage)} onChange={(value) => onChange(Number(value))}>
      {snapshot.stages.map(({ id, name }, at) => (
        <option key={id} value={at}>
          {`${at + 1} ${name}`}
        </option>
      ))}
    </Choice>
  );
}

interface HeapProps {
  readonly on: SheetContext;
  readonly choices: SheetChoices;
  readonly choose: (change: Partial<SheetChoices>) => void;
}

function HeapChoices({ on, choices, choose }: HeapProps) {
  const { words, snapshot } = on;
  const scales = heapScales(on);
  const materials = heapMaterials(snapshot.report);
  return (
    <>
      {materials.length > 1 && (
        <Choice
          name={words.material}
          value={choices.material ?? ''}
          onChange={(value) => choose({ material: value === '' ? null : value })}
        >
          <option value="">{words.heaps.ofStage}</option>
          <option value={ALL_MATERIALS}>{words.heaps.all(materials.length)}</option>
          {materials.map((id) => (
            <option key={id} value={id}>
              {snapshot.materialNames.get(id) ?? id}
            </option>
          ))}
        </Choice>
      )}
      <Choice name={words.scale} value={String(choices.scale ?? scales[0] ?? '')} onChange={(value) => choose({ scale: Number(value) })}>
        {scales.map((scale) => (
          <option key={scale} value={scale}>
            {`1 : ${scale}`}
          </option>
        ))}
      </Choice>
    </>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly children: ReactNode;
}

function Choice({ name, value, onChange, children }: ChoiceProps) {
  return (
    <label className="sheet-choice">
      <span>{name}</span>
      <select value={value} onChange={(event) => onChange(event.target.value)}>
        {children}
      </select>
    </label>
  );
}
