import Accuracy from "./Accuracy.astro";
import Calculator from "./Calculator.astro";
import Caution from "./Caution.astro";
import Cite from "./Cite.astro";
import Figure from "./Figure.astro";
import Drawn from "./figures/Drawn.astro";
import ExampleCutaway from "./figures/ExampleCutaway.astro";
import ExampleLadder from "./figures/ExampleLadder.astro";
import ExampleLitres from "./figures/ExampleLitres.astro";
import ExampleTs from "./figures/ExampleTs.astro";
import ExampleWaterfall from "./figures/ExampleWaterfall.astro";
import Guess from "./Guess.astro";
import Margin from "./Margin.astro";
import Note from "./Note.astro";
import Predict from "./Predict.astro";
import Question from "./Question.astro";
import Relation from "./Relation.astro";
import Standing from "./Standing.astro";
import SymbolOf from "./Symbol.astro";
import Term from "./Term.astro";
import Value from "./Value.astro";
import WorkedExample from "./WorkedExample.astro";

/** What a page in content/ may use without importing it. */
export const mdxComponents = {
  Accuracy,
  Calculator,
  Caution,
  Cite,
  Drawn,
  ExampleCutaway,
  ExampleLadder,
  ExampleLitres,
  ExampleTs,
  ExampleWaterfall,
  Figure,
  Guess,
  Margin,
  Note,
  Predict,
  Question,
  Relation,
  Standing,
  Symbol: SymbolOf,
  Term,
  Value,
  WorkedExample,
};
