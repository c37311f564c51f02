import { absoluteSalinity } from "../../../calc/fluids/absolute-salinity.ts";
import { practicalSalinity } from "../../../calc/fluids/practical-salinity.ts";
import { subject } from "../subject.ts";

export default subject<{ S: number }>(({ S }, trace) => {
  const S_P = trace.use(practicalSalinity, { S }, "seawater");
  return { S_P, S_back: trace.use(absoluteSalinity, { S_P }, "seawater") };
});
