import type { Section } from "./block.ts";

/** What cannot be known this way, what will be objected, and where the reckoning comes from. */
export const ofItsLimits: readonly Section[] = [
  {
    id: "cannot-know",
    title: "What this cannot know",
    blocks: [
      {
        list: [
          "A part from another piece of the same date and place. No date tells it from an original one. Only what holds the two apart can (other screw holes, another timber, another hand), and that has to be recorded as separate.",
          "Whether anybody meant to deceive. Old habits can be copied to the letter; the story “made later to look old” is an assumption about a copyist, and its number is chosen.",
          "What was not recorded. Looking only for what fits, and leaving the rest unsaid, deceives every method.",
          "What the evidence has wrong in common: if every book took a date from one book, the graph has one source, however many it cites.",
          "How common things were. Curves are drawn through dates of beginning and end, not through counts, and one prevalence stands for every thing in full use.",
          "Who made it, what it is worth, and whether to buy it.",
        ],
      },
    ],
  },
  {
    id: "objections",
    title: "Ten objections, and what is done about them",
    blocks: [
      {
        list: [
          "“Your curves are opinions.” They are. A curve with an assumed event is marked as such, the answer is worked out again with other assumptions, and where dated pieces are counted, thirty or more of them, counts are to take the place of the shape. There are none yet.",
          "“Books record the striking and the first, and what survives is the best.” So a little probability is left everywhere (the leak), old habits linger (late survival), an attestation bounds nothing, and every answer is one given this graph, whose gaps for the piece are listed.",
          "“You looked at what suited you.” Absences count, and can be recorded as such; the list of looks does not care which way an answer would go. Stopping early does no harm. Reporting selectively does, and no reckoning can undo it.",
          "“Eight handles changed on one afternoon are one fact.” Parts recorded as together share one state and one year, and count once; traces of one tool, signs of one cause and claims of one source are linked as well.",
          "“A good copy has everything.” Then dates cannot tell it. Copying is a story of its own with its own assumptions, weighed against the others, and deceit only on request and with its prior on show.",
          "“With so little, your prior decides.” Often. So three priors stand side by side, the bounds under any tenth of another are printed, and within half a decade of odds the answer is that the evidence does not discriminate.",
          "“A probability of nought cannot be mended.” None is given out: the leak and misreading keep every year open. What is impossible outright is said by the findings, by rules and not by weights.",
          "“Six digits of guesswork.” Six digits are kept so that two machines can be compared. Sentences say two, years go by fives when they are wide, and beyond 150 years they say undetermined.",
          "“The model itself may be wrong, and that is in none of your numbers.” True, and why there is no score. The answer is a sentence with its range, its reasons and what was not looked at; the findings beside it stand without the model.",
          "“The rules say impossible and the weights say likely.” That happens where only habits clash: a rule of habit is broken at a price. Both are shown, with which of the claims are physical and which are practice.",
        ],
      },
    ],
  },
  {
    id: "checked",
    title: "How it is checked",
    blocks: [
      "The sums are held to an enumeration of every year, state and age, one by one, that shares no code with them; to worked cases by hand; and to simulation: pieces drawn from the model must be found again at the rates that are printed. What is foreseen of a look is held to weighing the piece again with it. Prices and mends are held to outside solvers. The tables on this page are read from the program itself.",
    ],
  },
  {
    id: "sources",
    title: "Sources",
    blocks: [
      {
        list: [
          "J. O. Berger and L. M. Berliner, “Robust Bayes and empirical Bayes analysis with ε-contaminated priors”, Annals of Statistics 14 (1986): bounds under other priors.",
          "I. J. Good, “Weight of evidence: a brief survey”, in Bayesian Statistics 2 (1985): the logarithm of the Bayes factor as a weight.",
          "D. V. Lindley, “On a measure of the information provided by an experiment”, Annals of Mathematical Statistics 27 (1956): bits expected of a look.",
          "S. Talts and others, “Validating Bayesian inference algorithms with simulation-based calibration” (2018): the check by simulation.",
          "European Network of Forensic Science Institutes, Guideline for Evaluative Reporting in Forensic Science (2015): the verbal scale. Known at second hand.",
          "R. Marquis and others, “Discussion on how to implement a verbal scale in a forensic laboratory”, Science and Justice 56 (2016), 364–370: on the use of that scale. Summary read.",
        ],
      },
      "The first four are cited for the method; that they say this is from memory.",
    ],
  },
];
