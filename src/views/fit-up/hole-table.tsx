import { useState } from 'react';
import { holesOf } from '../../order/holes.ts';
import { profileOf } from '../../order/profile-of.ts';
import { markWords } from '../../order/words.ts';
import { Action } from '../parts/action.tsx';
import { usePlan } from '../use-session.ts';
import { useWorkGiven } from './use-work.ts';

interface Props {
  readonly of: 'lower' | 'feet';
}

/** The holes of a step as one marks them, one press away. */
export function HoleTable({ of }: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <div className="fit-up-holes">
      <Action expanded={isOpen} onPress={() => setOpen(!isOpen)}>
        {isOpen ? 'Close the hole table' : 'Hole table'}
      </Action>
      {isOpen && <Rows of={of} />}
    </div>
  );
}

function Rows({ of }: Props) {
  const { ask, units } = useWorkGiven();
  const { holes, unanswered, notes } = holesOf(ask, units, profileOf(ask, usePlan()));
  return (
    <>
      <table className="fit-up-table type-small" data-holes={of}>
        <caption className="type-small">
          As planned. Tape level along the face from the centreline, and up the face from the waterline mark;
          in brackets, what the rounding adds in mm.
        </caption>
        <thead>
          <tr>
            <th scope="col">Hole</th>
            <th scope="col">From the centreline</th>
            <th scope="col">Up the face</th>
          </tr>
        </thead>
        <tbody>
          {holes.map((hole) =>
            (hole.place === 'lower') === (of === 'lower') ? (
              <tr key={hole.name}>
                <th scope="row">
                  {hole.number}. {hole.name}
                </th>
                <td>
                  {markWords(hole.acrossFace, units)} {hole.side}
                </td>
                <td>{markWords(hole.upFace, units)}</td>
              </tr>
            ) : null,
          )}
        </tbody>
      </table>
      {[...unanswered, ...notes].map((words) => (
        <p key={words} className="type-small">
          {words}
        </p>
      ))}
    </>
  );
}
