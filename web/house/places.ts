/** A page of the house. */
export interface HousePlace {
  readonly to: string;
  readonly name: string;
  /** What one does there, as a sentence. */
  readonly says: string;
}

/** What many share in one house, in the order it is read. A new page adds a line. */
export const HOUSE_PLACES: readonly HousePlace[] = [
  {
    to: "/house/proposals",
    name: "Proposals",
    says: "Changes of the evidence that somebody asks for: what they say, what accepting them would do, who decides.",
  },
  {
    to: "/house/disputes",
    name: "Disputes",
    says: "Accepted claims that somebody doubts, and how earlier doubts ended.",
  },
  {
    to: "/house/propose",
    name: "Propose something",
    says: "A claim with its source, a term, a correction, or many claims from a table.",
  },
  { to: "/people", name: "People", says: "Who has an account, and what each may do." },
  {
    to: "/house/history",
    name: "History",
    says: "Every revision of the evidence: when, by whom and why, and what any two of them say otherwise.",
  },
  {
    to: "/house/digest",
    name: "What changed for you",
    says: "What became of the things you follow, and of the pieces whose report you signed.",
  },
  {
    to: "/house/proof",
    name: "Proof",
    says: "Whether anything was changed behind the house's back, and how others can check.",
  },
  {
    to: "/house/sharing",
    name: "Other houses",
    says: "What this house gives to others, and takes from them as proposals.",
  },
];
