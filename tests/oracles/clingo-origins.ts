import { run } from "clingo-wasm";
import type { AnyOrigins } from "#tests/support/any-origins.ts";

/** The fewest origins by clingo (Gebser et al. 2019): every part in a group, every group at one place and year that all of it allows. */
export async function originsByClingo({ parts, separate, together }: AnyOrigins): Promise<number> {
  const years = [...new Set(parts.flatMap(({ spans }) => spans.map(([, last]) => last)))];
  const facts = parts.flatMap(({ id, spans, regions }) => [
    `p(${id}).`,
    ...years
      .filter((year) => spans.some(([first, last]) => first <= year && year <= last))
      .flatMap((year) => regions.map((region) => `w(${id},${region},${year}).`)),
  ]);
  const program = `g(1..${parts.length}). ${facts.join(" ")}
${separate.map(([a, b]) => `s(${a},${b}).`).join(" ")}
${together.flatMap(([a, ...others]) => others.map((b) => `t(${a},${b}).`)).join(" ")}
c(R,Y) :- w(_,R,Y).
1 { in(P,G) : g(G) } 1 :- p(P).
used(G) :- in(_,G).
1 { at(G,R,Y) : c(R,Y) } 1 :- used(G).
:- in(P,G), at(G,R,Y), not w(P,R,Y).
:- in(P,G), in(Q,G), s(P,Q).
:- t(P,Q), in(P,G), not in(Q,G).
:- used(G), G > 1, not used(G-1).
#minimize { 1,G : used(G) }.
`;
  const answer = (await run(program, 0, ["--opt-mode=opt"])) as {
    readonly Result: string;
    readonly Models?: { readonly Costs?: readonly number[] };
  };
  const cost = answer.Models?.Costs?.[0];
  if (answer.Result !== "OPTIMUM FOUND" || cost === undefined)
    throw new Error(`clingo says ${JSON.stringify(answer)}`);
  return cost;
}
