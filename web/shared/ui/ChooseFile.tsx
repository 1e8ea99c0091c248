import { FileTrigger } from "react-aria-components/FileTrigger";
import { Button } from "./Button.tsx";

interface Props {
  /** Endings and media types that the file dialog offers. */
  types: readonly string[];
  onChoose: (file: File) => void;
  isDisabled?: boolean;
}

/** A button that opens the file dialog and gives the one file that was chosen there. */
export const ChooseFile = ({ types, onChoose, isDisabled = false }: Props) => (
  <FileTrigger
    acceptedFileTypes={types}
    onSelect={(files) => {
      const [chosen] = files ?? [];
      if (chosen !== undefined) onChoose(chosen);
    }}
  >
    <Button isDisabled={isDisabled}>Choose a file</Button>
  </FileTrigger>
);
