/** Gives a text to the browser to save as a file, in the place where it saves downloads. */
export function saveFile(name: string, text: string, type: FileType): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // A browser may begin to read it a moment later.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

export type FileType = 'application/json' | 'text/csv;charset=utf-8';
