import { NotInBook } from '@/app/(shop)/_parts/not-in-book';

export default function NothingToTrace() {
  return (
    <NotInBook
      title="There is nothing of that name to trace."
      toDo="A trace begins at a lot, a container, a piece, a job, a kept sample or a fault: open its page and press “Trace it”."
    />
  );
}
