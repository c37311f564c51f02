declare module "@citation-js/core" {
  interface Options {
    readonly format?: "html" | "text";
    readonly style?: string;
    readonly lang?: string;
  }
  export class Cite {
    constructor(data: unknown);
    readonly data: readonly { readonly id: string }[];
    format(
      output: "bibliography",
      options: Options & { readonly asEntryArray: true },
    ): [id: string, entry: string][];
    format(output: "citation", options: Options): string;
  }
  export const plugins: {
    config: { get(plugin: "@csl"): { styles: { add(name: string, csl: string): void } } };
  };
}
declare module "@citation-js/plugin-bibtex";
declare module "@citation-js/plugin-csl";
