interface Props<Value extends string> {
  readonly legend: string;
  readonly options: readonly (readonly [value: Value, words: string])[];
  readonly value: Value;
  readonly onPick: (value: Value) => void;
}

/** One of a few, as words in a line. */
export function OneOf<Value extends string>({ legend, options, value, onPick }: Props<Value>) {
  return (
    <fieldset className="paper-choice">
      <legend className="type-small base-soft">{legend}</legend>
      {options.map(([its, words]) => (
        <label key={its} className="paper-option type-label">
          <input
            type="radio"
            name={legend}
            value={its}
            checked={its === value}
            onChange={() => onPick(its)}
            className="paper-radio"
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}
