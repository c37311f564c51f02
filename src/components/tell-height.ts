// A page in a frame tells the page around it how high it is, each time that changes, so that the frame can be made to fit.
// Whoever frames it may know: there is nothing secret in a height.
import { heightMessage } from "../widgets/frame-snippet.ts";

if (window !== parent) {
  const tell = () =>
    parent.postMessage(
      {
        [heightMessage]: Math.ceil(document.body.getBoundingClientRect().height),
        address: location.pathname,
      },
      "*",
    );
  new ResizeObserver(tell).observe(document.body);
}
