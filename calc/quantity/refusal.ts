/**
 * The sentence that refuses a text. It never leaves the readers of this folder. What the field accepts is said behind it,
 * unless the sentence is `whole` and says that itself.
 */
export class Refusal extends Error {
  readonly isWhole: boolean;

  constructor(says: string, extent?: "whole") {
    super(says);
    this.isWhole = extent === "whole";
  }
}
