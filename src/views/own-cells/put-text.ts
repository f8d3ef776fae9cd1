/** Writes into a box as typing would, so that whoever listens hears of it, and leaves the caret there. */
export function putText(box: HTMLInputElement, text: string, caret: number): void {
  box.focus();
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(box, text);
  box.dispatchEvent(new Event('input', { bubbles: true }));
  box.setSelectionRange(caret, caret);
}
