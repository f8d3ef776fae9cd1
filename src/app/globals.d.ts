/** Whether the page is built with the grid. */
declare const __WITH_GRID__: boolean;
