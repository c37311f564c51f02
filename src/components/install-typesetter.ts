// At build the widgets' symbols are typeset here; in the browser they stand in the page already.
import { typesetSymbol } from "../integrations/typeset/relation.ts";
import { typesetter } from "../widgets/symbol.tsx";

typesetter.symbol = typesetSymbol;
