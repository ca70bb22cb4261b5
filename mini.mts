import { calibrate } from "@/engine/calibration";
const calls = Number(process.argv[2]); const part = process.argv[3] ?? ""; const seed=Number(process.argv[4] ?? 777001);
const rows: any[] = [
 ["clean drawn","2–4 a size","drawn",undefined],
 ["few drawn","1–2 a size, two sizes empty, 30 % lost","drawn",undefined],
 ["cause","3 a size","cause",undefined],
 ["small","3 a size","cause and small errors",undefined],
 ["nothing","3 a size","nothing",undefined],
 ["wrong nothing","3 a size","nothing","2 % of readings wrong"],
 ["wrong drawn","2–4 a size","drawn","2 % of readings wrong"],
 ["tester nothing","3 a size","nothing","one tester wholly wrong"],
 ["tester drawn","2–4 a size","drawn","one tester wholly wrong"],
 ["rough drawn","2–4 a size","drawn","rough noise"],
 ["rough nothing","3 a size","nothing","rough noise"],
 ["tight drawn","2–4 a size","drawn","all 4 % tight"],
];
for (const [name, design, fault, trouble] of rows) {
  if (!name.includes(part)) continue;
  const t0=performance.now();
  const { tally, errors } = calibrate({ design, fault, entryErrorShare: 0, trouble, calls, seed });
  const ms=(performance.now()-t0)/calls;
  const p=(k:string)=>{const s=tally.share(k);return s===null?"-":(100*s).toFixed(1)};
  console.log(name.padEnd(15), `cover ${p("covered")} err ${errors.rootMeanSquare("model").toFixed(3)}/${errors.rootMeanSquare("known variances").toFixed(3)} off1 ${p("off within 1")} holds1.5 ${p("holds beyond 1½")} off1.5 ${p("off beyond 1½")} holds.5 ${p("holds within ½")} named ${p("cause named")} first ${p("first, findable")} (${tally.of("first, findable")}) all ${p("first, all calls")} conv ${p("converged")} ${ms.toFixed(0)} ms`);
}
