// Fetched together, when a finger first touches a field.
export { AnswerStrip } from "./answer-strip.tsx";
export { FieldKeys } from "./field-keys.tsx";
