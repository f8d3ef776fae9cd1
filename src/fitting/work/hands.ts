/** How many people a step takes, as its row of facts says it. */
export const ONE = 'One person';
export const TWO = 'Two people';
export const TWO_ONE_INSIDE = 'Two people, one of them inside';
/** Where something heavy is held. */
export const TWO_HOLDING = 'Two people: one holds, the other works';
