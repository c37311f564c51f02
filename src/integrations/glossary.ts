/** A term of the glossary: its anchor, what it means, and other words under which a text may use it. */
export interface GlossaryEntry {
  readonly id: string;
  readonly term: string;
  readonly means: string;
  readonly also?: readonly string[] | undefined;
}
