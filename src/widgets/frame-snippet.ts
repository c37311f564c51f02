/** The key of the message in which a framed page tells its height, in CSS pixels. */
export const heightMessage = "chargeAirHeight";

/** What a framed page may do. Scripts are all that it computes with; the others let its links open and its files be saved. */
const sandbox = "allow-scripts allow-popups allow-popups-to-escape-sandbox allow-downloads";

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;");

/** What a course page takes in to show a page of this site in a frame of so many CSS pixels. */
export const frameSnippet = (title: string, address: string, height: number): string =>
  `<iframe title="${escaped(title)}" src="${escaped(address)}"
  width="100%" height="${height}" sandbox="${sandbox}"
  allow="clipboard-write" loading="lazy"></iframe>`;

/** What a course page takes in beside it, so that the frame becomes as high as what stands in it. */
export const growingScript = (site: string): string => `<script>
  addEventListener("message", ({ data, source }) => {
    for (const frame of document.querySelectorAll('iframe[src^="${site}"]'))
      if (frame.contentWindow === source && data?.${heightMessage} > 0)
        frame.height = Math.min(data.${heightMessage} + 8, 9000);
  });
</script>`;
