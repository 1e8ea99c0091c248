import { type PieceFile, readPieceFile } from "../answers/read-piece-file.ts";
import type { Turn } from "../answers/turn-piece.ts";

/** A small invented piece that shows one thing about how findings are made. What it shows, the engine says when it is asked. */
export interface Example {
  /** Its place on the page, and in the address. */
  readonly id: string;
  readonly title: string;
  /** What it is about, without its outcome. */
  readonly says: readonly string[];
  readonly piece: ReturnType<typeof readPieceFile>;
  readonly asItIs: string;
  /** What one chooses among. */
  readonly label: string;
  readonly turns: readonly Turn[];
  /** Observations whose chain is unfolded from the start. */
  readonly unfolds?: readonly string[];
}

const EXAMINED = 2026;

type Seen = NonNullable<PieceFile["observations"]>;

const piece = (claimed: PieceFile["attribution"], parts: PieceFile["parts"], observations: Seen) =>
  readPieceFile({
    title: "Example",
    invented: true,
    examined: EXAMINED,
    attribution: claimed,
    parts,
    observations,
  });

const CHEST = "form.chest-of-drawers";
const PENNSYLVANIA_CHEST = { date: "1760/1780", region: "region.pennsylvania", form: CHEST };

const screw = { id: "screw", part: "screws", feature: "feature.gimlet-point-screw" } as const;
const screws = { id: "screws", label: "Screws of the top", kind: "part.fastener" };
const arcs = { id: "arcs", part: "back", feature: "feature.circular-saw-mark" } as const;
const back = { id: "back", label: "Back boards", kind: "part.back" };
const top = { id: "top", label: "Top", kind: "part.top" };

export const HARD_OR_SOFT: Example = {
  id: "hard-or-soft",
  title: "A hard clash and a soft one",
  says: [
    "Physical claims say that a tool, a material or a design did not yet exist; they alone can make years impossible. Practice claims say what was habit or fashion; a piece outside them is out of its time, and nothing more.",
    "Here are two things on one chest, one of each kind. The cross and the words “cannot be” belong to the hard clash, the stroke and the word “unusual” to the soft one.",
  ],
  piece: piece(
    PENNSYLVANIA_CHEST,
    [screws, back],
    [
      { ...screw, seen: "present" },
      { ...arcs, seen: "present" },
    ],
  ),
  asItIs: "a chest claimed to be of Pennsylvania, 1760 to 1780",
  label: "Claim another date",
  turns: [
    { id: "t-1830", says: "claimed 1825 to 1835", change: { claimed: { date: "1825/1835" } } },
    { id: "t-1855", says: "claimed 1850 to 1860", change: { claimed: { date: "1850/1860" } } },
  ],
};

export const ABSENT: Example = {
  id: "absent",
  title: "Why absence says nothing of the years",
  says: [
    "That a thing is not there does not show that it could not be had: most pieces have most things not. Looked for and absent is recorded all the same, since it closes the question whether anybody looked.",
  ],
  piece: piece(PENNSYLVANIA_CHEST, [screws], [{ ...screw, seen: "absent" }]),
  asItIs: "gimlet-pointed screws looked for, and absent",
  label: "Look again",
  turns: [
    { id: "t-unseen", says: "they could not be seen", change: { seen: [{ ...screw, seen: "unseen" }] } },
    { id: "t-seen", says: "they are there", change: { seen: [{ ...screw, seen: "present" }] } },
  ],
};

const shrunk = { id: "shrunk", part: "top", feature: "feature.shrinkage-across-grain" } as const;

export const ABSENT_YET_A_SIGN: Example = {
  id: "absent-yet-a-sign",
  title: "Where absence does speak",
  says: [
    "What time does to every piece is another matter. Wood shrinks, hidden faces darken, edges wear; where such a thing was looked for in vain, it speaks against an old part. It is a sign and not a date, and it has innocent causes of its own.",
  ],
  piece: piece(
    { date: "1740/1760", region: "region.england", form: CHEST },
    [top],
    [{ ...shrunk, seen: "absent" }],
  ),
  asItIs: "a wide solid top without a trace of shrinkage",
  label: "Look again",
  turns: [
    {
      id: "t-quartered",
      says: "the boards are quartered: their rays stand upright at the end grain",
      change: { seen: [{ id: "rays", part: "top", feature: "feature.quartered-boards", seen: "present" }] },
    },
    { id: "t-shrunk", says: "it has shrunk after all", change: { seen: [{ ...shrunk, seen: "present" }] } },
  ],
  unfolds: ["shrunk"],
};

export const DISPUTED: Example = {
  id: "disputed",
  title: "A dispute that stays open",
  says: [
    "Where sources disagree about the same thing in the same place, none is chosen. A finding is only as hard as the kindest of them allows, and it names those that keep it open. So a claim between their years is neither confirmed nor condemned.",
  ],
  piece: piece({ ...PENNSYLVANIA_CHEST, date: "1842/1845" }, [screws], [{ ...screw, seen: "present" }]),
  asItIs: "gimlet-pointed screws, claimed 1842 to 1845: between two dates given for the machine",
  label: "Claim another date",
  turns: [
    { id: "t-before", says: "claimed 1830 to 1835, before both", change: { claimed: { date: "1830/1835" } } },
    { id: "t-after", says: "claimed 1860 to 1870, after both", change: { claimed: { date: "1860/1870" } } },
  ],
  unfolds: ["screw"],
};

const gesso = { id: "gesso", part: "carving", feature: "feature.traces-of-gesso" } as const;

export const EXCUSED: Example = {
  id: "excused",
  title: "An exception that excuses",
  says: [
    "A claim can have exceptions: things which, where they are seen, take its force away. Each is a thing that can be looked for. A claim set aside is shown with its reason and never hidden; an exception that nobody looked for is named, so that somebody can.",
  ],
  piece: piece(
    { date: "1765/1780", region: "region.london", form: "form.side-chair" },
    [{ id: "carving", label: "Carving of the back", kind: "part.carving" }],
    [{ id: "rough", part: "carving", feature: "feature.rough-carved-ground", seen: "present" }],
  ),
  asItIs: "rough, shallow carving on a chair, and no more was looked for",
  label: "Look into the depth of the cuts with a lens",
  turns: [
    { id: "t-gesso", says: "white ground is found there", change: { seen: [{ ...gesso, seen: "present" }] } },
    {
      id: "t-perhaps",
      says: "something white, possibly ground",
      change: { seen: [{ ...gesso, seen: "present", sureness: "possible" }] },
    },
    { id: "t-bare", says: "nothing is found there", change: { seen: [{ ...gesso, seen: "absent" }] } },
  ],
  unfolds: ["rough"],
};

const nail = { id: "nail", part: "back", feature: "feature.wire-nail" } as const;

export const REPAIRED: Example = {
  id: "repaired",
  title: "A later repair condemns nothing",
  says: [
    "Old furniture was mended, and a repair has its own date. A late nail in a first hole speaks of the board; the same nail beside an older, dark-edged hole speaks of the day when somebody put the board back. And a part that proves later says only that it is later: the others are judged by what is seen on them.",
  ],
  piece: piece(PENNSYLVANIA_CHEST, [back], [{ ...nail, seen: "present" }]),
  asItIs: "wire nails in the back boards; nobody looked for older holes",
  label: "Look beside the nails",
  turns: [
    {
      id: "t-older",
      says: "an older, dark-edged hole beside each",
      change: {
        seen: [{ id: "older", part: "back", feature: "feature.nail-beside-older-hole", seen: "present" }],
      },
    },
    {
      id: "t-first",
      says: "no older hole, on any board",
      change: {
        seen: [{ id: "older", part: "back", feature: "feature.nail-beside-older-hole", seen: "absent" }],
      },
    },
  ],
  unfolds: ["nail"],
};

const grain = { id: "grain", part: "bottoms", feature: "feature.bottom-grain-front-to-back" } as const;

export const ELSEWHERE: Example = {
  id: "elsewhere",
  title: "A claim holds where it is meant",
  says: [
    "Each claim is meant for a place, and often for one form or kind of part. A habit of British shops says nothing of American ones. Where no claim covers the place, the finding is silent, and says that this is why.",
  ],
  piece: piece(
    { date: "1775/1790", region: "region.london", form: CHEST },
    [{ id: "bottoms", label: "Drawer bottoms", kind: "part.drawer-bottom" }],
    [{ ...grain, seen: "present" }],
  ),
  asItIs: "drawer bottoms with the grain from front to back, London, claimed 1775 to 1790",
  label: "Claim another place or date",
  turns: [
    { id: "t-usa", says: "the same in Pennsylvania", change: { claimed: { region: "region.pennsylvania" } } },
    { id: "t-1735", says: "London again, claimed 1730 to 1745", change: { claimed: { date: "1730/1745" } } },
  ],
};

export const UNDECIDED: Example = {
  id: "undecided",
  title: "What “does not discriminate” means",
  says: [
    "Much that is old was never given up: hand-sawn boards, hand-cut dovetails, troughs of the hand plane. They agree with any date, so they decide between none. When nothing recorded speaks to the claimed years, the answer says so, and it is the same answer for whatever else is claimed. It is not a weak yes.",
  ],
  piece: piece(
    PENNSYLVANIA_CHEST,
    [{ id: "drawers", label: "Drawers", kind: "part.drawer" }, back],
    [
      { id: "tails", part: "drawers", feature: "feature.hand-cut-dovetail", seen: "present" },
      { id: "kerfs", part: "back", feature: "feature.pit-saw-mark", seen: "present" },
      { id: "troughs", part: "back", feature: "feature.hand-plane-troughs", seen: "present" },
    ],
  ),
  asItIs: "all hand work, claimed 1760 to 1780",
  label: "Claim another date, or see one thing more",
  turns: [
    { id: "t-1690", says: "claimed 1690 to 1700", change: { claimed: { date: "1690/1700" } } },
    { id: "t-1890", says: "claimed 1880 to 1890", change: { claimed: { date: "1880/1890" } } },
    {
      id: "t-arcs",
      says: "claimed 1760 to 1780, with circular-saw arcs on one board of the back",
      change: { seen: [{ ...arcs, seen: "present" }] },
    },
  ],
};

/** In the order of the page. */
export const EXAMPLES: readonly Example[] = [
  HARD_OR_SOFT,
  ABSENT,
  ABSENT_YET_A_SIGN,
  DISPUTED,
  EXCUSED,
  REPAIRED,
  ELSEWHERE,
  UNDECIDED,
];
