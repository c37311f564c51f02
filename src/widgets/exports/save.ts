/** `charge-path-2026-03-09.csv`: by the visitor's own calendar. */
export function fileName(id: string, ending: string, day = new Date()): string {
  const two = (n: number) => String(n).padStart(2, "0");
  return `${id}-${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}.${ending}`;
}

/** Gives a text to the visitor as a file. */
export function save(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads it after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
