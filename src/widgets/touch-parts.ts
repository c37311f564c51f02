// Fetched together, when a finger first touches a field.
import look from "../styles/keys.css?url";

export { AnswerStrip } from "./answer-strip.tsx";
export { FieldKeys } from "./field-keys.tsx";

/** Settles when they have their look. A plain import of it would be sent with every page by the build. */
export const dressed = new Promise<void>((done) => {
  const link = document.createElement("link");
  link.rel = "stylesheet";
  link.href = look;
  link.onload = link.onerror = () => done();
  document.head.append(link);
});
