import { type ReactNode, useCallback, useMemo, useRef, useState } from "react";
import type { Hardness } from "#server/domain/claim.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { PartId, TermId } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import type { PlainStateOdds } from "#server/domain/weighing/odds.ts";
import type { Stage, Weighing } from "#server/domain/weighing/weighing.ts";
import { oddsOfParts, sameOdds } from "./same-odds.ts";
import { tellStory } from "./tell-story.ts";
import { useWeighing } from "./use-weighing.ts";
import { type StoryDesk, StoryProvider, type WeighingDesk, WeighingProvider } from "./weighing-desk.ts";

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
  const [tried, setTried] = useState<ChosenOdds>();
  const odds = useMemo(() => oddsOfParts(tried ?? piece.odds ?? {}, piece.parts), [tried, piece]);
  const isTrial = tried !== undefined && !sameOdds(odds, piece.odds);
  const weighedPiece = useMemo(() => ({ ...piece, odds }), [piece, odds]);
  const run = useWeighing(weighedPiece, revision, mayAsk);
  const { weighed } = run;
  const assumedOf = useAssumed(weighed.weighing);

  const dropTrial = useCallback(() => setTried(undefined), []);
  const keepTrial = useCallback(() => onKeep(odds), [onKeep, odds]);
  const isOld = useCallback(
    (stage: Stage) => weighed.weighing[stage] !== undefined && !weighed.fresh.has(stage),
    [weighed],
  );
  const desk = useMemo<WeighingDesk>(
    () => ({
      ...run,
      ...{ piece, odds, isTrial, isOld, assumedOf, onRecord, dropTrial, keepTrial },
      tryOdds: setTried,
    }),
    [run, piece, odds, isTrial, isOld, assumedOf, onRecord, dropTrial, keepTrial],
  );
  return (
    <WeighingProvider value={desk}>
      <StoryProvider value={useStoryDesk(weighed)}>{children}</StoryProvider>
    </WeighingProvider>
  );
}

function useStoryDesk({ weighing, words }: WeighingDesk["weighed"]): StoryDesk {
  const [level, setLevel] = useState<Hardness>("physical");
  const [choices, setChoices] = useState<Readonly<Record<string, string>>>({});
  const choose = useCallback(
    (row: string, option: string) => setChoices((before) => ({ ...before, [row]: option })),
    [],
  );
  const { mends } = weighing;
  const said = words.mends;
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
