import type { Section } from "./block.ts";
import { movesTable, pricesTable, rivalsTable, signsTable, typicalTable } from "./tables.ts";

/** How signs speak, and how each kind of answer is come by. */
export const ofTheAnswers: readonly Section[] = [
  {
    id: "signs",
    title: "Signs without a date",
    blocks: [
      "A nail hole that holds nothing, an edge still sharp where hands went, a wide board that never shrank: these date nothing, and yet speak of the state of a part. Each such claim names the states it speaks for. Its strength is turned into two probabilities: of the sign in those states, and in the others. Looked for and absent, it counts by 1 - detection · that. A sign that an exception accounts for is set aside: shown, and given no weight.",
      "A sign that original, reused and reworked parts all show, such as wear, oxidation or shrinkage, is one of age: any part shows it once it is old, a later one too. In a new part it is as probable as the table has it for other states, and grows evenly to the full value at the age at which signs of age are full. So it weighs against a part of yesterday, and not against one replaced two centuries ago.",
      { table: signsTable },
      "The last column is the verbal scale that the European Network of Forensic Science Institutes gives as an example in its Guideline for Evaluative Reporting in Forensic Science (2015), as far as it is known to us: a ratio of 2 to 10 is weak support for one proposition rather than the other, to 100 moderate, to 1,000 moderately strong, above that strong, very strong (10,000) and extremely strong (1,000,000). We could not open the guideline itself, so no section is cited; that it allows such a scale, to be used beside the number and not for it, stands in the summary of Marquis and others (2016). The probabilities in the table are ours and assumed. The scale is shown to place them, and the report uses its own shorter words (below).",
      "What the words mean is the same as there: a sign makes what was seen so many times as probable in one state as in another. It does not make the state so many times as probable; that needs the prior too.",
    ],
  },
  {
    id: "words-for-weights",
    title: "Words for weights",
    blocks: [
      "The weight of a thing seen is the decimal logarithm of the Bayes factor: how many times as probable it is if the claimed years hold as if they do not (Good 1985). 1 is ten to one. The words are ours, and always stand with the number.",
      {
        list: [
          "under 0.5: slight. If the weight of everything together is under this, the evidence does not discriminate, and the headline says that and nothing else of the claim.",
          "0.5 to 1: moderate.",
          "1 to 2: strong.",
          "above 2: very strong.",
          "at probability 0 or 1: beyond the model. No number is printed.",
        ],
      },
      "Two weights are worked out for each thing: what is lost when it alone is left out, and its step in a chain, in a stated order, that adds up to the whole. The first are not added up: things that lean on one another share what they say. For states of parts: “very probably” from 0.95, “probably” from 0.75, “more likely than not” from 0.5, else “possibly”.",
    ],
  },
  {
    id: "mends",
    title: "What would have to be true: prices",
    blocks: [
      "A mend is a set of things to give up so that the attribution stands. What is given up is priced in thousandths of a decade of odds, from the same numbers as above, so that the cheapest mend is near the likeliest story: 1000 · log10(chance that it holds / chance of what would have to be), rounded, never below 0. A claim that saves several parts is paid once. The claimed date, region, form and maker are not for sale; whether it is cheaper to move the date is asked apart.",
      { table: pricesTable },
      "Cheapest is proved or said not to be: where the search is cut short, the answer names the best that was found and the price below which there is none. Every mend shown has been tried on the evidence without what it gives up.",
    ],
  },
  {
    id: "origins",
    title: "Separate pieces: a lower bound",
    blocks: [
      "“At least three” is what logic forces: three parts no two of which can have been made in one place and year. It is a lower bound and never a count: two pieces of one year and place look like one. It is drawn from what is possible, without the fall-back; “if habits held” is told apart.",
    ],
  },
  {
    id: "rivals",
    title: "Rival stories",
    blocks: [
      "Each story has its own years of making, all alike, and its own assumptions; the Bayes factor holds it against the story as claimed. The priors matter only for the last number; the factors stand without them.",
      { table: rivalsTable },
      {
        list: [
          "As claimed, all of one making: the claimed years; every part original with 0.98.",
          "As claimed, with later parts: the claimed years; parts by the table above.",
          "Provincial and late: up to 60 years after the claimed ones; habits survive at 0.3 after they went out.",
          "Of another region: the claimed years, by the claims for that region; up to three regions that what was seen is typical of.",
          "Of a revival: from 50 years after the claimed ones; habits out of their time copied with 0.6, while tools, materials and hardware keep their dates.",
          "Made up from several: from the claimed years on; parts reused with 0.45, original with 0.4.",
          "Assembled lately from old parts: in the last 150 years; parts reused with 0.75, by 120 years in the mean.",
          "Made later to look old: not weighed unless asked for, with a prior of the asker's own; habits copied with 0.9, and the leak at 0.02 or more.",
        ],
      },
      "Where a region is compared, habits typical of it count by the next table. Habits travel, so no region is ruled out by them.",
      { table: typicalTable },
      "Basis: assumed, all of it.",
    ],
  },
  {
    id: "looking-next",
    title: "What to look at next",
    blocks: [
      "A look is worth the bits it is expected to tell: how much less open the question will be on the average, over seen, absent, and cannot be seen (Lindley 1956). Two questions are asked in turn: whether the claimed years hold, and what state the part is in. The bits are divided by the trouble. A look that would support the claim and one that would sink it rank alike if they tell as much: swapping the claim for its opposite changes no order.",
      "First stand exceptions that nobody looked for: found, they take away a finding. Not asked for are what was recorded already, what it answers (another wood where the wood was seen, a look-alike that was told apart), and what no piece of the form has. One look of each family is told, and three on a part; how many were left out, and why, stands below the list.",
      { table: movesTable },
      "Basis: assumed. Whatever is unfastened or sampled is for those who are licensed to.",
      "The inspection plan is the same reckoning before anything was seen, on a piece that has the usual parts of its form, in the order in which one goes round it.",
    ],
  },
  {
    id: "sensitivity",
    title: "How far the answer depends on this",
    blocks: [
      {
        list: [
          "each prior on the year;",
          "later parts half and twice as probable, taken from or given to “original”;",
          "the leak half and twice as large;",
          "wrong claims half and twice as common, the fall-back with them;",
          "each source left out that alone stands behind claims that were used;",
          "the least and the greatest probability if a tenth of the prior may lie on any years whatever (Berger and Berliner 1986).",
        ],
      },
      "All of it is worked out with every answer. Where any of it turns the word of the answer, or makes another state of a part the likeliest, the answer says “depends on”, and on what.",
    ],
  },
  {
    id: "headline",
    title: "The headline",
    blocks: [
      "It is a sentence with a range and at most three reasons. There is no score and no light, because a single number would hide everything on this page. Years told as credible are the fewest that hold 95 %, equal ones taken together, as spans with gaps; where they reach over more than 25 years they are told by fives, over more than 150 as undetermined.",
    ],
  },
];
