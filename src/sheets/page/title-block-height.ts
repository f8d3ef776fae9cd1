/** Height of the title block at the foot of every sheet, with the space above it, mm. */
export const TITLE_BLOCK = 28;
