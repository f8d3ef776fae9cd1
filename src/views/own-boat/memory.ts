/** Where the steps taken so far outlive the page. */
export interface Memory {
  readonly read: () => string | null;
  readonly write: (text: string) => void;
}

const KEY = 'sternmount-own-boat';

/** The window's own memory: it lasts through reloads and a phone's dropping of pages, and no longer. */
export const windowMemory: Memory = {
  read: () => {
    try {
      return window.sessionStorage.getItem(KEY);
    } catch {
      return null;
    }
  },
  write: (text) => {
    try {
      window.sessionStorage.setItem(KEY, text);
    } catch {
      // A browser that stores nothing still has the steps as long as the page stands.
    }
  },
};
