/**
 * The address in the browser of a path from the root of the site, which may stand below a path of its own. What the build
 * draws keeps the plain path: the build puts the other before it on whole pages.
 */
export const atRoot = (path: string): string =>
  import.meta.env.SSR ? path : import.meta.env.BASE_URL + path.slice(1);
