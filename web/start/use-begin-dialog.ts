import type { ComponentType } from "react";
import { useFetched } from "../shared/ui/use-fetched.ts";
import type { Props } from "./BeginDialog.tsx";

const loadDialog = () => import("./BeginDialog.tsx");

/** The form that begins an examination: it weighs too much for the first page. Undefined until it is there. */
export const useBeginDialog = (): ComponentType<Props> | undefined => useFetched(loadDialog)?.BeginDialog;
