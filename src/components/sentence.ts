/** Text as it stands at the start of a sentence. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A title as it stands within a sentence. */
export const uncapitalised = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
