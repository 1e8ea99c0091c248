import { type RefCallback, useCallback, useState } from "react";

/** The width of a frame, px, as it changes; undefined before it stands. Goes on the frame as its `ref`. */
export function useFrameWidth(): readonly [width: number | undefined, ref: RefCallback<HTMLElement>] {
  const [width, setWidth] = useState<number>();
  const ref = useCallback((frame: HTMLElement | null) => {
    if (!frame) return;
    const read = () => {
      // On paper the frame is not shown.
      if (frame.clientWidth > 0) setWidth(frame.clientWidth);
    };
    const observer = new ResizeObserver(read);
    observer.observe(frame);
    read();
    return () => observer.disconnect();
  }, []);
  return [width, ref];
}
