/**
 * Brings the style sheets that a fetched page or part of one names and this page lacks. Settles when they are there, so that
 * who waits shows nothing that jumps.
 */
export async function bringStyles(fetched: Document): Promise<void> {
  const here = new Set([...document.styleSheets].map(({ href }) => href));
  const links = [...fetched.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')];
  await Promise.all(
    links
      .filter(({ href }) => !here.has(href))
      .map(
        (link) =>
          new Promise<void>((done) => {
            link.onload = link.onerror = () => done();
            document.head.append(document.adoptNode(link));
          }),
      ),
  );
}
