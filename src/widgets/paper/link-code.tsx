import { correction, generate } from "lean-qr";
import { toSvgPath } from "lean-qr/extras/svg";

/** The empty rim that readers of such codes need, in modules (ISO/IEC 18004; from memory). */
const RIM = 4;
/** A module no smaller than this is read off paper by a phone: common practice, no source. In mm. */
const MODULE = 0.45;
const LEAST_WIDTH = 30;

/** A link as a QR code to be read off paper; null where the link is longer than any code can hold. */
export function LinkCode({ link }: { link: string }) {
  const code = codeOf(link);
  if (!code) return null;
  const modules = code.size + 2 * RIM;
  const width = `${Math.max(LEAST_WIDTH, MODULE * modules).toFixed(1)}mm`;
  return (
    <svg
      class="code"
      role="img"
      aria-label="The link as a QR code"
      width={width}
      height={width}
      viewBox={`${-RIM} ${-RIM} ${modules} ${modules}`}
      shape-rendering="crispEdges"
    >
      <rect x={-RIM} y={-RIM} width={modules} height={modules} fill="#fff" />
      <path d={toSvgPath(code)} fill="#000" />
    </svg>
  );
}

/** The code with no more correction than fits without a larger one. */
function codeOf(link: string) {
  try {
    return generate(link, { minCorrectionLevel: correction.L });
  } catch {
    return null;
  }
}
