import type { Units } from '../../plan/plan.ts';
import { firstGearInputs } from '../../session/own-boat/steps.ts';
import { Action } from '../parts/action.tsx';
import { shown } from '../parts/show.ts';

interface Props {
  readonly units: Units;
  readonly onGoOn: () => void;
  readonly onMeasure: () => void;
}

/** Without the gear's manual: which values stay stand-ins, and that none of them is to be drilled by. */
export const GearLater = ({ units, onGoOn, onMeasure }: Props) => (
  <>
    <p>
      You have no manual at hand, so every value of the gear is a round figure of our own for now. These three
      say most about where it fits:
    </p>
    <ul className="own-boat-standins">
      {firstGearInputs.map((cell) => (
        <li key={cell.name}>
          <span className="type-label">{cell.label}</span>
          <span className="own-boat-standin type-label">
            {typeof cell.value === 'number' ? shown(cell.value, cell.unit, units) : String(cell.value)}
          </span>
        </li>
      ))}
    </ul>
    <p>
      <strong>Measure them on the gear itself before you drill.</strong> Until then every limit that rests on
      them says so.
    </p>
    <div className="own-boat-doors">
      <Action plate onPress={onGoOn}>
        Go on with stand-ins
      </Action>
      <Action onPress={onMeasure}>I can measure the gear now</Action>
    </div>
  </>
);
