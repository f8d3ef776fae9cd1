import { useEffect, useLayoutEffect, useState } from 'react';
import type { InputCell, Page } from '../plan/template.ts';
import { LimitBoard } from '../views/board/limit-board.tsx';
import { FormPage } from '../views/form/form-page.tsx';
import { Announcer } from '../views/frame/announcer.tsx';
import { FaultPlate } from '../views/frame/fault-plate.tsx';
import { FocusKeeper } from '../views/frame/focus-keeper.tsx';
import { LeadSentence } from '../views/frame/lead-sentence.tsx';
import { PlanTitle } from '../views/frame/plan-title.tsx';
import { type Shape, useShape } from '../views/frame/shape.ts';
import { Skip } from '../views/frame/skip.tsx';
import { TitleBlock } from '../views/frame/title-block.tsx';
import { WorstStrip } from '../views/frame/worst-strip.tsx';
import { NotJudged } from '../views/not-judged/not-judged.tsx';
import { UnitPlate } from '../views/parts/unit-plate.tsx';
import { ResultsPage } from '../views/results/results-page.tsx';
import { useReady, useSession } from '../views/use-session.ts';
import { useDeckLight } from './deck-light.ts';
import type { Kept } from './kept.ts';
import { KeptWords } from './kept-words.tsx';
import { Bar, Names } from './names.tsx';
import { go, type Place, useAskedCell, usePlace } from './route.ts';
import { savePlan } from './save-plan.ts';
import {
  FitUp,
  GridView,
  LostDoor,
  OrderList,
  OwnBoat,
  OwnCells,
  PaperDoor,
  PlanDoor,
  ReadingPicture,
  Reference,
  Remedies,
  RemedySentence,
  ScenarioPanel,
  SideDrawing,
  SurveyPage,
  SweepPanel,
} from './slots.tsx';
import { StudiesPlace } from './studies-place.tsx';
import { StudyNotice } from './study-notice.tsx';
import '../views/frame/frame.css';

const FORM: Partial<Record<Place, Page>> = { boat: 'Boat', gear: 'Gear', mount: 'Mount' };
const RESULTS: Partial<Record<Place, Page>> = { checks: 'Checks', loads: 'Loads', parts: 'Parts' };

/** Places whose tables or steps need the room of two columns; the limits then stand in the strip alone. */
const BROAD: ReadonlySet<Place> = new Set([
  'parts',
  'workbook',
  'scenarios',
  'studies',
  'fit-up',
  'plan',
  'paper',
  'own-boat',
  'reference',
]);

/** Places that show what three columns show beside any other. */
const ALONE: ReadonlySet<Place> = new Set(['board', 'drawing', 'sweep']);

const remedies = (limit: string) => <Remedies limit={limit} />;
const mend = (limit: string) => <RemedySentence limit={limit} />;
const pictureOf = (cell: InputCell) => <ReadingPicture name={cell.name} />;

/** Brings the cell that the address asks for into sight, with the focus on its field or line. */
function showCell(name: string): void {
  const cell = document.querySelector<HTMLElement>(`main [data-cell="${CSS.escape(name)}"]`);
  cell?.scrollIntoView({ block: 'center' });
  cell?.querySelector<HTMLElement>('[data-input], button')?.focus({ preventScroll: true });
}

interface Props {
  readonly kept: Kept;
}

/** The page: its names, the drawing, what is being worked on, the limits, the chart, the title block. */
export function App({ kept }: Props) {
  const session = useSession();
  const shape = useShape();
  // With the limits always in sight, the places that show them alone are the form's.
  const goal = usePlace();
  const place = shape === 'three' && ALONE.has(goal) ? 'mount' : goal;
  const [deckLight, setDeckLight] = useDeckLight();
  const asked = useAskedCell();
  // While an own boat is being read, neither the open plan nor its limits stand beside it.
  const [isReading, setIsReading] = useState(false);
  // Another page starts at its top.
  useLayoutEffect(() => {
    for (const it of [window, ...document.querySelectorAll('.page-body, .page-middle')]) it.scrollTo(0, 0);
  }, [place]);
  useEffect(() => {
    if (asked !== undefined) showCell(asked);
  }, [asked]);
  const inColumns = shape === 'three' || shape === 'two';
  const isWorkbook = place === 'workbook';
  const isBroad = BROAD.has(place);
  const withDrawing =
    shape === 'three' || (shape === 'two' && !isWorkbook) || (shape === 'low' && place !== 'drawing');
  const withBoard = inColumns && !isBroad && place !== 'board' && !(shape === 'two' && isWorkbook);
  return (
    <div className="page" data-shape={shape} data-place={place} data-broad={isBroad ? '' : undefined}>
      <Skip />
      <header className="page-head">
        <PlanTitle />
        {inColumns && <Names place={place} all />}
      </header>
      <div className="page-columns">
        {withDrawing && (
          <aside className="page-drawing" aria-label="Drawing">
            <SideDrawing blank={isReading} patient={place === 'workbook'} />
          </aside>
        )}
        <div className="page-body">
          {(shape !== 'three' || isBroad) && !isReading && (
            <section className="page-strip" aria-label="Worst limits">
              <WorstStrip rows={inColumns ? 2 : 1} href="#/board" />
            </section>
          )}
          {!inColumns && <Names place={place} all={false} />}
          <main className="page-middle">
            <Middle place={place} shape={shape} asked={asked} kept={kept} onReading={setIsReading} />
          </main>
          {withBoard && (
            <aside className="page-right" aria-label="Limits">
              <div className="page-board">
                <LimitBoard remedies={remedies} />
              </div>
              <div className="page-chart">
                <SweepPanel height={220} />
              </div>
            </aside>
          )}
        </div>
      </div>
      <div className="page-plates">
        <FaultPlate onSave={() => savePlan(session.plan)} />
        <StudyNotice />
        <LostDoor kept={kept} />
      </div>
      {!inColumns && <Bar place={place} />}
      {(inColumns || place === 'board') && (
        <TitleBlock kept={<KeptWords kept={kept} />} deckLight={deckLight} onDeckLight={setDeckLight} />
      )}
      <Announcer />
      <FocusKeeper />
      <UnitPlate />
    </div>
  );
}

interface MiddleProps {
  readonly place: Place;
  readonly shape: Shape;
  readonly asked: string | undefined;
  readonly kept: Kept;
  readonly onReading: (isReading: boolean) => void;
}

function Middle({ place, shape, asked, kept, onReading }: MiddleProps) {
  const ready = useReady();
  const isWide = shape === 'three' || shape === 'two';
  const form = FORM[place];
  if (form !== undefined) {
    return (
      <>
        {isWide && <LeadSentence mend={mend} />}
        <FormPage page={form} oneByOne={shape === 'one' ? pictureOf : undefined} />
      </>
    );
  }
  const results = RESULTS[place];
  if (results !== undefined) {
    return (
      <>
        {place === 'parts' && <OrderList />}
        <ResultsPage page={results} opened={asked} />
      </>
    );
  }
  switch (place) {
    case 'survey':
      return (
        <SurveyPage
          form={<FormPage page="Survey" oneByOne={shape === 'one' ? pictureOf : undefined} />}
          results={<ResultsPage page="Survey" opened={asked} />}
          alone={shape === 'one'}
          asked={asked}
        />
      );
    case 'own-cells':
      return <OwnCells />;
    case 'studies':
      return <StudiesPlace asked={asked} />;
    case 'fit-up':
      return <FitUp asked={asked} />;
    case 'scenarios':
      return <ScenarioPanel />;
    case 'workbook':
      return ready ? <GridView {...(asked === undefined ? {} : { asked })} /> : null;
    case 'plan':
      return <PlanDoor kept={kept} />;
    case 'paper':
      return <PaperDoor />;
    case 'own-boat':
      return <OwnBoat onUnderway={onReading} onDone={() => go(isWide ? 'mount' : 'board')} />;
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
          <LeadSentence mend={mend} />
          <LimitBoard remedies={remedies} />
          <SweepPanel height={220} />
        </>
      );
  }
}
