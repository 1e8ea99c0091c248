import { type RefObject, useEffect, useState } from "react";

/** True once the element has come near the window; stays true. Where that cannot be told, at once. */
export function useInView(element: RefObject<Element | null>): boolean {
  const [isInView, setIsInView] = useState(false);
  useEffect(() => {
    if (isInView || !element.current) return;
    const observer = new IntersectionObserver(
      (entries) => {
        if (entries.some((entry) => entry.isIntersecting)) setIsInView(true);
      },
      { rootMargin: "300px" },
    );
    observer.observe(element.current);
    // What is printed has to be there, in sight or not.
    const show = () => setIsInView(true);
    addEventListener("beforeprint", show);
    return () => {
      observer.disconnect();
      removeEventListener("beforeprint", show);
    };
  }, [element, isInView]);
  return isInView;
}
