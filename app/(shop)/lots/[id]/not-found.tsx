import { NotInBook } from '@/app/(shop)/_parts/not-in-book';

export default function NoSuchLot() {
  return (
    <NotInBook
      title="This lot is not in the book."
      toDo="Lots are found through their code, their product or one of their containers: search for any of them."
    />
  );
}
