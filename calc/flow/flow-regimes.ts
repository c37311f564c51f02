/** Reynolds numbers up to which a flow is laminar, and from which on it is turbulent. Common limits, no source. */
export const LAMINAR_UP_TO = 2300;
export const TURBULENT_FROM = 4000;
