import { useCallback, useEffect, useState, useSyncExternalStore } from 'react';
import type { InputCell, Page } from '../plan/template.ts';
import { LimitBoard } from '../views/board/limit-board.tsx';
import { FormPage } from '../views/form/form-page.tsx';
import { Lead } from '../views/frame/lead.tsx';
import { TitleBlock } from '../views/frame/title-block.tsx';
import { WorstStrip } from '../views/frame/worst-strip.tsx';
import { NotJudged } from '../views/not-judged/not-judged.tsx';
import { ResultsPage } from '../views/results/results-page.tsx';
import { useReady } from '../views/use-session.ts';
import type { Kept } from './kept.ts';
import { KeptWords, LostWords } from './kept-words.tsx';
import { Bar, Names } from './names.tsx';
import { go, type Place, usePlace } from './route.ts';
import { GridView, OwnBoat, OwnCells, PlanPanel, ReadingPicture, Reference, Remedies, RemedySentence, ScenarioPanel, SideDrawing, SweepPanel } from './slots.tsx';
import '../views/frame/frame.css';

const FORM: Partial<Record<Place, Page>> = { boat: 'Boat', gear: 'Gear', mount: 'Mount' };
const RESULTS: Partial<Record<Place, Page>> = { checks: 'Checks', loads: 'Loads', parts: 'Parts' };

const wide = window.matchMedia('(min-width: 45em)');
const watchWide = (listener: () => void): (() => void) => {
  wide.addEventListener('change', listener);
  return () => wide.removeEventListener('change', listener);
};

const remedies = (limit: string) => <Remedies limit={limit} />;
const mend = (limit: string) => <RemedySentence limit={limit} />;
const pictureOf = (cell: InputCell) => <ReadingPicture name={cell.name} />;

/** Shows the choice that was asked for on the form, and puts the focus there. */
function showCell(name: string): void {
  requestAnimationFrame(() => {
    const field = document.querySelector<HTMLElement>(`[data-view="form"] [data-input="${name}"]`);
    field?.scrollIntoView({ block: 'center' });
    field?.focus();
  });
}

interface Props {
  readonly kept: Kept;
}

/** The page: its names, the drawing, what is being worked on, the limits, the chart, the title block. */
export function App({ kept }: Props) {
  const place = usePlace();
  const isWide = useSyncExternalStore(watchWide, () => wide.matches);
  const [deckLight, setDeckLight] = useState(false);
  useEffect(() => {
    document.documentElement.dataset.deckLight = deckLight ? 'on' : 'off';
  }, [deckLight]);
  const onChoice = useCallback((name: string) => {
    go('mount');
    showCell(name);
  }, []);
  const isWorkbook = place === 'workbook';
  return (
    <div className="page" data-wide={isWorkbook ? '' : undefined}>
      <Names place={place} />
      {isWide && (
        <aside className="page-drawing" aria-label="Drawing">
          <SideDrawing />
        </aside>
      )}
      <div className="page-strip">
        <WorstStrip rows={isWide ? 2 : 1} onOpen={() => go('board')} />
      </div>
      <main className="page-middle">
        <Middle place={place} isWide={isWide} onChoice={onChoice} />
      </main>
      {isWide && !isWorkbook && (
        <aside className="page-right" aria-label="Limits">
          <div className="page-board">
            <LimitBoard remedies={remedies} onChoice={onChoice} />
          </div>
          <div className="page-chart">
            <SweepPanel height={220} />
          </div>
        </aside>
      )}
      <LostWords kept={kept} />
      {!isWide && <Bar place={place} />}
      {(isWide || place === 'board') && (
        <TitleBlock kept={<KeptWords kept={kept} />} deckLight={deckLight} onDeckLight={setDeckLight} />
      )}
    </div>
  );
}

interface MiddleProps {
  readonly place: Place;
  readonly isWide: boolean;
  readonly onChoice: (name: string) => void;
}

function Middle({ place, isWide, onChoice }: MiddleProps) {
  const ready = useReady();
  const form = FORM[place];
  if (form !== undefined) {
    return (
      <>
        {(isWide || place === 'mount') && <Lead mend={mend} />}
        <FormPage page={form} oneByOne={isWide ? undefined : pictureOf} />
      </>
    );
  }
  const results = RESULTS[place];
  if (results !== undefined) return <ResultsPage page={results} />;
  switch (place) {
    case 'own-cells':
      return <OwnCells />;
    case 'scenarios':
      return <ScenarioPanel />;
    case 'workbook':
      return ready ? <GridView /> : null;
    case 'plan':
      return <PlanPanel />;
    case 'own-boat':
      return <OwnBoat onDone={() => go(isWide ? 'mount' : 'board')} />;
    case 'reference':
      return <Reference />;
    case 'not-judged':
      return <NotJudged />;
    case 'drawing':
      return isWide ? (
        <FormPage page="Mount" />
      ) : (
        <div className="page-drawing">
          <SideDrawing />
        </div>
      );
    case 'sweep':
      return <SweepPanel height={320} />;
    default:
      return (
        <>
          <Lead mend={mend} />
          <LimitBoard remedies={remedies} onChoice={onChoice} />
          <SweepPanel height={220} />
        </>
      );
  }
}
