/** Why a file is not a backup that can be brought in. */
export type BackupError =
  | { readonly kind: 'empty' | 'checksum-mismatch' }
  | { readonly kind: 'not-json'; readonly position: number; readonly isCutShort: boolean }
  | { readonly kind: 'not-a-backup'; readonly field: string }
  | { readonly kind: 'newer-version'; readonly version: number }
  | { readonly kind: 'wrong-count'; readonly expected: number; readonly found: number }
  | {
      readonly kind: 'damaged-entry';
      readonly index: number;
      readonly field: string;
      readonly expected: string;
    }
  | {
      readonly kind: 'same-id-twice';
      readonly id: string;
      readonly earlier: number;
      readonly index: number;
    };
