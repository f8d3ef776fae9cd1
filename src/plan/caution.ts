/** Stands on everything that leaves the workbook: messages, sheets, tables. */
export const CAUTION =
  'These are estimates. The gear maker’s manual comes first, and the rules that apply where the boat is used; let a rigger, yard or surveyor look before you drill.';
