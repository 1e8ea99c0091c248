import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { LessonView } from "./LessonView.tsx";
import { findLesson } from "./lessons.ts";

/** The lesson at an address. */
export function LessonPage({ id }: { id: string }) {
  const lesson = findLesson(id);
  return lesson ? <LessonView lesson={lesson} /> : <NotFoundPage what="lesson" id={id} />;
}
