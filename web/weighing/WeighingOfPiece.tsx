import { type ReactNode, useCallback, useDeferredValue, useMemo, useRef, useState } from "react";
import type { Hardness } from "#server/domain/claim.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { PartId, TermId } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import type { PlainStateOdds } from "#server/domain/weighing/odds.ts";
import { STAGES, type Weighing } from "#server/domain/weighing/weighing.ts";
import type { WeighingWords } from "#server/domain/weighing/weighing-words.ts";
import { oddsOfParts, sameOdds } from "./same-odds.ts";
import { tellStory } from "./tell-story.ts";
import { useWeighing } from "./use-weighing.ts";
import {
  type OddsDesk,
  OddsProvider,
  OldProvider,
  RunProvider,
  type StoryDesk,
  StoryProvider,
  type WeighedDesk,
  WeighedProvider,
} from "./weighing-desk.ts";

interface Props {
  /** As it is stored: the examination shown is of it. */
  piece: Piece;
  /** Of the examination that is shown; undefined where there is none. */
  revision: number | undefined;
  /** False while a change is on its way. */
  mayAsk: boolean;
  onKeep: (odds: ChosenOdds) => void;
  onRecord: (part: PartId, feature: TermId, label: string) => void;
  children: ReactNode;
}

/** Weighs the piece, and gives what comes of it to everything inside; what is tried out is known here only. */
export function WeighingOfPiece({ piece, revision, mayAsk, onKeep, onRecord, children }: Props) {
  const { chosen, odds } = useOddsDesk(piece, onKeep);
  const weighedPiece = useMemo(() => ({ ...piece, odds: chosen }), [piece, chosen]);
  const run = useWeighing(weighedPiece, revision, mayAsk);
  const { weighed } = run;
  const { weighing, words, claims, terms, fresh } = weighed;
  const assumedOf = useAssumed(weighing);
  const desk = useMemo<WeighedDesk>(
    () => ({ weighed: { weighing, words, claims, terms }, assumedOf, onRecord }),
    [weighing, words, claims, terms, assumedOf, onRecord],
  );
  const old = useMemo(
    () => new Set(STAGES.filter((stage) => weighing[stage] !== undefined && !fresh.has(stage))),
    [weighing, fresh],
  );
  return (
    <OddsProvider value={odds}>
      <RunProvider value={run}>
        <WeighedProvider value={useDeferredValue(desk)}>
          <OldProvider value={useDeferredValue(old)}>
            <StoryProvider value={useStoryDesk(weighing, words)}>{children}</StoryProvider>
          </OldProvider>
        </WeighedProvider>
      </RunProvider>
    </OddsProvider>
  );
}

/** What is chosen, tried or kept; the same object as long as it assumes the same. */
function useOddsDesk(
  piece: Piece,
  onKeep: Props["onKeep"],
): { readonly chosen: ChosenOdds; readonly odds: OddsDesk } {
  const [tried, setTried] = useState<ChosenOdds>();
  const last = useRef<ChosenOdds>({});
  const fresh = oddsOfParts(tried ?? piece.odds ?? {}, piece.parts);
  if (!sameOdds(last.current, fresh)) last.current = fresh;
  const chosen = last.current;
  const isTrial = tried !== undefined && !sameOdds(chosen, piece.odds);
  const odds = useMemo<OddsDesk>(
    () => ({
      ...{ odds: chosen, isTrial, tryOdds: setTried },
      dropTrial: () => setTried(undefined),
      keepTrial: () => onKeep(chosen),
    }),
    [chosen, isTrial, onKeep],
  );
  return { chosen, odds };
}

function useStoryDesk({ mends }: Partial<Weighing>, { mends: said }: Partial<WeighingWords>): StoryDesk {
  const [level, setLevel] = useState<Hardness>("physical");
  const [choices, setChoices] = useState<Readonly<Record<string, string>>>({});
  const choose = useCallback(
    (row: string, option: string) => setChoices((before) => ({ ...before, [row]: option })),
    [],
  );
  const story = useMemo(() => {
    const told = level === "physical" ? mends?.possible : mends?.usual;
    const inWords = said?.find((each) => each.level === level);
    return told && inWords ? tellStory(told, inWords, choices) : undefined;
  }, [mends, said, level, choices]);
  return useMemo(() => ({ level, setLevel, story, choose }), [level, story, choose]);
}

/** Remembers what is assumed of each part from the answers in which nothing was chosen for it. */
function useAssumed({ dates, odds }: Partial<Weighing>): (part: PartId) => PlainStateOdds | undefined {
  const known = useRef(new Map<PartId, PlainStateOdds>());
  return useMemo(() => {
    const chosen = new Set(odds?.ofParts.map(({ part }) => part));
    for (const { parts, prior } of dates?.parts ?? []) {
      const plain = 1 - prior.reworked;
      if (!parts.some((part) => chosen.has(part)))
        for (const part of parts)
          known.current.set(part, {
            original: prior.original / plain,
            later: prior.later / plain,
            reused: prior.reused / plain,
          });
    }
    return (part) => known.current.get(part);
  }, [dates, odds]);
}
