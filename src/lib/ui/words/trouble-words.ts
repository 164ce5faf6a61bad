import type { StoreError } from '#store';

/** What a grown-up can do when something was not saved. What was typed is still on the screen. */
export function troubleWords(error: StoreError): string {
  switch (error.kind) {
    case 'no-room':
      return 'This device has no room left, so that was not saved yet. It is still on the screen. Make some room, then try again; or save a backup file under Records first.';
    case 'interrupted':
      return 'The saving was interrupted, so that was not saved yet. It is still on the screen: try again.';
    case 'closed':
      return 'The notebook was closed by another window, so that was not saved yet. Copy what you wrote, then load this page again.';
    case 'newer-program-has-it':
      return 'A newer Morning Measure has opened this notebook. Load this page again to use the newer one. Nothing was changed.';
    case 'unavailable':
      return 'This browser would not save that just now. It is still on the screen: try again.';
  }
}
