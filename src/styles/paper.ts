import tokens from "./tokens.css?raw";

const [, light = "", dark = ""] = /--paper: light-dark\((#\w+), (#\w+)\)/.exec(tokens) ?? [];

/** The colour of the page, for what a browser draws around it. */
export const paper = { light, dark } as const;
