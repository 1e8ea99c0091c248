import { Component, lazy, type ReactNode, Suspense, useEffect, useState } from "react";
import type { TermId } from "#server/domain/ids.ts";
import styles from "./FeatureDrawing.module.css";
import { findDrawing } from "./find-drawing.ts";

/** The drawings are a chunk of their own, fetched when the first one is shown. */
const DrawnFeature = lazy(async () => ({
  default: (await import("./features/DrawnFeature.tsx")).DrawnFeature,
}));

interface Props {
  term: TermId;
  /** Broader terms of the term, nearest first: a term without a drawing takes over theirs. */
  broaderTerms?: readonly TermId[];
  /** Side of the square in CSS pixels. Below 96 the drawing has less detail and no words. */
  size: number;
}

/** What a term looks like, as a line drawing whose name says what tells. Nothing where no drawing is known. */
export function FeatureDrawing({ term, broaderTerms = [], size }: Props) {
  const drawing = findDrawing(term, broaderTerms);
  const isWanted = useAfterPaint();
  if (drawing === undefined) return null;
  if (!isWanted) return <Room size={size} />;
  return (
    <WithoutPicture>
      <Suspense fallback={<Room size={size} />}>
        <DrawnFeature drawing={drawing} size={size} />
      </Suspense>
    </WithoutPicture>
  );
}

let isPainted = false;

/** False until the first page that shows a drawing stands in words: the drawings are a large file, and words come first. */
function useAfterPaint(): boolean {
  const [isAfter, setAfter] = useState(isPainted);
  useEffect(() => {
    if (isAfter) return;
    const frame = requestAnimationFrame(() => {
      isPainted = true;
      setAfter(true);
    });
    return () => cancelAnimationFrame(frame);
  }, [isAfter]);
  return isAfter;
}

/** Keeps the place of a drawing that is on its way, so that nothing moves when it comes. */
const Room = ({ size }: { size: number }) => (
  <svg className={styles["room"]} width={size} height={size} viewBox="0 0 1 1" aria-hidden="true" />
);

/** A page can be read without its picture: where the drawings cannot be loaded, their place stays empty. */
class WithoutPicture extends Component<{ children: ReactNode }, { hasFailed: boolean }> {
  override state = { hasFailed: false };

  static getDerivedStateFromError() {
    return { hasFailed: true };
  }

  override render() {
    return this.state.hasFailed ? null : this.props.children;
  }
}
