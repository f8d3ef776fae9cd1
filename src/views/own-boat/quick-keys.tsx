import { FRACTION_KEYS } from '../../session/own-boat/fraction-keys.ts';
import { withFraction, withOtherSign } from '../../session/own-boat/with-fraction.ts';

interface Props {
  readonly typed: string;
  /** Fractions of an inch, which a phone's number keys do not have. */
  readonly fractions: boolean;
  /** The other sign, which they do not have either. */
  readonly sign: boolean;
  readonly onWrite: (text: string) => void;
}

interface KeyProps {
  readonly face: string;
  readonly says: string;
  readonly onPress: () => void;
}

const Key = ({ face, says, onPress }: KeyProps) => (
  <button
    type="button"
    className="own-boat-key"
    aria-label={says}
    onMouseDown={(event) => event.preventDefault()}
    onClick={onPress}
  >
    {face}
  </button>
);

/** Keys within a thumb's reach for what the phone's own number keys lack. */
export function QuickKeys({ typed, fractions, sign, onWrite }: Props) {
  if (!fractions && !sign) return null;
  return (
    <fieldset className={fractions ? 'own-boat-keys' : 'own-boat-keys own-boat-keys-few'}>
      <legend className="base-spoken">Quick keys</legend>
      {fractions &&
        FRACTION_KEYS.map(([over, under]) => (
          <Key
            key={`${over}/${under}`}
            face={`${over}⁄${under}`}
            says={`${over}⁄${under}, fraction of an inch`}
            onPress={() => onWrite(withFraction(typed, over, under))}
          />
        ))}
      {sign && <Key face="+ −" says="+ −, the other sign" onPress={() => onWrite(withOtherSign(typed))} />}
    </fieldset>
  );
}
