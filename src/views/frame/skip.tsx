/** Takes the keyboard past the names of the pages. */
export const Skip = () => (
  <button
    type="button"
    className="skip type-label"
    onClick={() =>
      document.querySelector('main')?.querySelector<HTMLElement>('[data-input], button, a')?.focus()
    }
  >
    Past the page names
  </button>
);
