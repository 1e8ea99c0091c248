import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Section } from "./block.ts";
import { numbersTable, statesTable, strengthsTable, surenessTable } from "./tables.ts";

/** What is weighed, and from what. */
export const ofTheModel: readonly Section[] = [
  {
    id: "what-is-weighed",
    title: "What is weighed",
    blocks: [
      "The findings come first and need no probability: a thing cannot be earlier than what it was made with. Weighing begins where that ends. A part can be later, old wood can be used again, a claim can be wrong, an eye can be deceived; which of these is the least surprising is a matter of more and less, and it depends on what one takes for granted. So everything taken for granted stands on this page, the numbers that matter most can be changed for one piece, and no answer is given without saying how it would move.",
      "Every number here is assumed unless a source stands beside it. They are rounded judgements of the trade about ordinary old furniture; none of them is a count. What comes out is a probability given this evidence and these assumptions, not a property of the piece.",
    ],
  },
  {
    id: "the-model",
    title: "The model",
    blocks: [
      "A piece was made in one year, and in one place. Each part of it, or each group of parts recorded as together, is in one of four states. Given the year and the place, the parts do not depend on one another: that is what lets the whole be added up exactly, year by year and part by part, with nothing sampled and nothing searched.",
      {
        formula: [
          "P(year t | all seen)  ∝  prior(t) · product over parts of M(part, t)",
          "M(part, t) = original · l(t) + later · mean of l over the years after t",
          "           + reused · mean of l over the years before t, the near ones weighing most",
          "           + reworked · product over features of [(1 - w) f(t) + w · mean of f over the years after t]",
        ],
      },
      `Here f(u) is how probable what was recorded of one feature is if it was worked in year u, l is the product of the f of the part, and w is the chance that a feature on a reworked part is of the later work. Later means any year from the making to the examination, all alike. Reused means older by a number of years that falls off geometrically, ${ASSUMED_ODDS.reuseYears} in the mean. At either end of the years, where there is nothing after or before, the part is taken to be of that year itself.`,
      "Where the place is left open, each place that the claims tell apart is weighed, and all parts of the first making share it. A part that the examiner gives a region of its own is judged there.",
    ],
  },
  {
    id: "states",
    title: "Four states of a part",
    blocks: [
      {
        list: [
          "Original: made with the piece.",
          "Later: made for the piece after its making, a replacement or an addition.",
          "Reused: made before the piece, for something else, and put to use in it, by the first maker or by a later hand.",
          "Reworked: of the first making, but worked over since: cut down, recarved, inlaid, rebored. What is seen on it may be of either time.",
        ],
      },
      `Before anything is seen, a part is taken by its kind. The parts that wear and break are the ones that are replaced. A kind without a row takes that of the nearest broader kind. Of every row, ${ASSUMED_ODDS.reworked} goes to “reworked” and the rest is scaled to fit. Parts that are together count once, with the row of the member that is most often original.`,
      { table: statesTable },
      "Basis: assumed. Each row can be changed for a part of one piece.",
    ],
  },
  {
    id: "prior-of-the-year",
    title: "The year, before anything is seen",
    blocks: [
      {
        list: [
          `Uniform (the usual): every year alike, from ${ASSUMED_ODDS.gridFrom} or a century before the claimed date if that is earlier, to the year of the examination.`,
          "As claimed: half within the claimed years, half spread over all of them. For those who would give the claim a start.",
          "By production: by the documented pieces of each decade, one more added to each; only where thirty or more are documented. The graph that comes with the program has no such counts, so here it is the same as uniform.",
        ],
      },
      "The claim itself is never a part of the usual prior: an attribution cannot be evidence for itself. What the answer would be under the others is always worked out beside it.",
    ],
  },
  {
    id: "how-common",
    title: "How common a thing was",
    blocks: [
      "Each dated feature has a curve: how common it was in each year, from near nothing to 1. It rises from its introduction to common use and falls from its decline to its end, in straight lines. Each of the four events is known within a range of years; the curve is the mean over five even steps of each range, pads for “about” included. Claims that disagree are averaged.",
      {
        formula: [
          "curve = leak + (1 - leak) · rise · (survival + (1 - survival) · fall)",
          "common use, where no claim states it:   25 years after the introduction",
          "introduction, where none is claimed:    40 years before common use",
          "end, where none is claimed:             40 years after the decline",
          "decline, where none is claimed:         25 years before the end",
        ],
      },
      "Where neither introduction nor common use is claimed the thing is taken to have always been there; where neither decline nor end is claimed, to have stayed. An end that is physical (a closed works, a statute, a process given up) leaves no stragglers. Outside the years that physical claims leave possible only the leak is left.",
      "A thing is no more common than some way of making it: its curve is multiplied by the chance that one of the ways of its closed list could be had, each way by the product of what it needs. Open lists bound nothing. Every event that had to be assumed is named with the answer as “shape assumed”: such a curve says from when a thing was possible, and little of how common it was.",
    ],
  },
  {
    id: "seen-and-absent",
    title: "Seen, looked for and absent, not looked for",
    blocks: [
      {
        formula: [
          "there(u) = right · curve(u) + (1 - right) · mean of the curve",
          "seen:    (1 - misread) · prevalence · there(u) + misread · base rate · prevalence",
          "absent:  1 - detection · prevalence · [(1 - misread) · there(u) + misread · base rate]",
        ],
      },
      "“Right” is the chance that all claims the curve rests on are right: the product over them, and over the fall-back if it is used. What was not looked for, and what could not be seen, says nothing either way. An absence counts by how surely the thing would have been found, and by how many parts of its time have it at all: most old drawers have no label, and a back without saw marks is no evidence against the saw. Of what is seen, prevalence scales every year alike, so it cancels.",
      { table: surenessTable },
      { table: numbersTable },
      "Basis of both tables: assumed.",
    ],
  },
  {
    id: "claims-may-be-wrong",
    title: "Claims may be wrong",
    blocks: [
      "A claim is trusted by its strength, which says how well it is founded, not how hard it bounds. A date with “?” is trusted less.",
      { table: strengthsTable },
      `Several things seen may rest on one claim, or on claims that one source alone stands behind. These are right or wrong together. The most shared (${ASSUMED_ODDS.worlds} at the most) are tried both ways, and the answers averaged by their chances; any that are left are taken for each thing by itself, and named. Basis: assumed.`,
    ],
  },
  {
    id: "one-tool",
    title: "One tool, several traces",
    blocks: [
      "Five arcs of one circular saw are not five witnesses. Where several things seen on a part come of one tool that every way of making them needs, they are weighed through the tool: it was used there or not, and given that, the traces are independent. However many there are, they weigh no more than the tool itself. Signs of one cause count once: what was seen before what was absent, then the strongest.",
      "Not done: kinds of one thing that shut one another out on a single board, such as two kinds of saw, are not yet weighed as one question. Looking next does not ask for them twice.",
    ],
  },
];
