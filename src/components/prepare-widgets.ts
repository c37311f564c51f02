// The widgets are drawn at build too. What the browser fetches later, or never has, is handed to them here.
import { typesetSymbol } from "../integrations/typeset/relation.ts";
import { fetchDrawers } from "../widgets/drawing.ts";
import { fetchPanel } from "../widgets/later-fold.tsx";
import { typesetter } from "../widgets/symbol.tsx";

typesetter.symbol = typesetSymbol;
await fetchDrawers();
await fetchPanel("sweep");
