import { shortSiteName, siteName } from "../components/site-name.ts";
import { paper } from "../styles/paper.ts";

const icon = (file: string, size: number, purpose: "any" | "maskable") => ({
  src: `./${file}`,
  sizes: `${size}x${size}`,
  type: "image/png",
  purpose,
});

/** What a device needs to put the site among its programs. Addresses count from this file, wherever the site stands. */
export function GET(): Response {
  return Response.json({
    name: siteName,
    short_name: shortSiteName,
    id: "./",
    start_url: "./",
    scope: "./",
    display: "standalone",
    lang: "en",
    background_color: paper.light,
    theme_color: paper.light,
    icons: [
      { src: "./icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
      icon("icon-192.png", 192, "any"),
      icon("icon-512.png", 512, "any"),
      icon("icon-maskable.png", 512, "maskable"),
    ],
  });
}
