import { run } from "clingo-wasm";
import type { MendInstance } from "#tests/support/mend-instance.ts";

/**
 * The cheapest mend as an answer-set program, on years of five (engine: clingo, Gebser et al. 2019): the same question, stated once more
 * and from nothing that the search uses.
 */
export function clingoProgram(instance: MendInstance): string {
  const { claimed, examined, parts, observations, windows, claims, separate, notSeparate } = instance;
  const facts: string[] = [];
  for (let year = 1600; year <= examined; year += 5) {
    facts.push(`y(${year}).`);
    if (year >= claimed[0] && year <= claimed[1]) facts.push(`a(${year}).`);
  }
  for (const [part, { later, reused }] of Object.entries(parts))
    facts.push(`p(${part}). price(later(${part}),${later}). price(reused(${part}),${reused}).`);
  for (const [o, { part, altered, misread }] of Object.entries(observations))
    facts.push(`o(${o},${part}). price(altered(${o}),${altered}). price(misread(${o}),${misread}).`);
  for (const [claim, price] of Object.entries(claims))
    facts.push(`c(${claim}). price(dropped(${claim}),${price}).`);
  for (const [k, { observation, years, claims: held }] of windows.entries()) {
    facts.push(`k(${k},${observation}).`, ...held.map((claim) => `kc(${k},${claim}).`));
    for (const [first, last] of years) facts.push(`w(${k},${Math.max(first, 0)},${Math.min(last, 9999)}).`);
  }
  for (const [a, b] of separate) facts.push(`s(${a},${b}). price(apart(${a},${b}),${notSeparate}).`);
  return `${facts.join("\n")}
1 { t(Y) : a(Y) } 1.
1 { tp(P,Y) : y(Y) } 1 :- p(P).
give(later(P)) :- tp(P,Y), t(T), Y > T.
give(reused(P)) :- tp(P,Y), t(T), Y < T.
other(P) :- give(later(P)).
other(P) :- give(reused(P)).
{ work(O,U) : y(U) } 1 :- o(O,_).
:- work(O,U), o(O,P), tp(P,Y), U < Y.
give(altered(O)) :- work(O,_).
made(O,U) :- work(O,U).
made(O,Y) :- o(O,P), tp(P,Y), not give(altered(O)).
{ give(misread(O)) } :- o(O,_).
{ give(dropped(C)) } :- c(C).
{ give(apart(P,Q)) } :- s(P,Q).
fits(K) :- k(K,O), made(O,Y), w(K,L,H), L <= Y, Y <= H.
free(K) :- kc(K,C), give(dropped(C)).
:- k(K,O), not fits(K), not free(K), not give(misread(O)).
:- s(P,Q), not other(P), not other(Q), not give(apart(P,Q)).
#minimize { W,X : give(X), price(X,W) }.
#show give/1.
`;
}

/** The least cost of a program, by clingo, which runs in a thread of its own. */
export async function leastByClingo(program: string): Promise<number> {
  const answer = await run(program, 0, ["--opt-mode=opt"]);
  const models = ("Models" in answer ? answer.Models : {}) as { readonly Costs?: readonly number[] };
  const cost = models.Costs?.[0];
  if (answer.Result !== "OPTIMUM FOUND" || cost === undefined)
    throw new Error(`clingo says ${JSON.stringify(answer)}`);
  return cost;
}
