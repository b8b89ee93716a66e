// Why points are asked again after an interruption.
import type { WalkProgress } from "../types";

export function SteppedBack({ progress }: { progress: WalkProgress }) {
  return (
    <div role="status">
      {progress.stepped_back && (
        <p class="banner" data-test="stepped-back">
          {progress.stepped_back}
        </p>
      )}
    </div>
  );
}
