// Draws the icons of public/ from icon.svg, once, when that changes: node src/icons/draw.mjs. The image library comes with astro.
import { readFile } from "node:fs/promises";
import sharp from "sharp";

const drawing = await readFile("public/icon.svg", "utf8");
const background = /<rect[^>]*fill="(#\w+)"/.exec(drawing)?.[1];
if (!background) throw new Error("public/icon.svg has no rectangle behind its drawing.");

const draw = (svg, size, file) =>
  sharp(Buffer.from(svg), { density: (72 * size) / 32 })
    .resize(size, size)
    .flatten({ background })
    .png({ palette: true, compressionLevel: 9 })
    .toFile(`public/${file}`);

await draw(drawing, 192, "icon-192.png");
await draw(drawing, 512, "icon-512.png");
// A device may cut a mask out of it: only the middle four fifths, as a circle, are safe.
await draw(drawing.replace('viewBox="0 0 32 32"', 'viewBox="-7 -7 46 46"'), 512, "icon-maskable.png");
