/** Tells two clicks on a cell, which open it on the text it holds, from two with typing between them. */
export interface PairOfClicks {
  readonly onKey: () => void;
  readonly onPress: () => void;
  /** Whether an opening by this event is one by keys, or by two clicks that follow each other. */
  readonly opens: (event: unknown) => boolean;
}

/**
 * The grid takes any two clicks within half a second for a pair. A quick hand that clicks, types, enters and clicks the
 * same cell again would then type on behind the old text.
 */
export function pairOfClicks(): PairOfClicks {
  let typed = false;
  let typedBetween = false;
  return {
    onKey: () => {
      typed = true;
    },
    onPress: () => {
      typedBetween = typed;
      typed = false;
    },
    opens: (event) => !(event instanceof MouseEvent) || !typedBetween,
  };
}
