import { NotInBook } from '@/app/(shop)/_parts/not-in-book';

export default function NoSuchPiece() {
  return (
    <NotInBook
      title="This piece is not in the book."
      toDo="Check the label: S, B, H or F, then six characters. If it was printed but never booked in, book it in now; otherwise search by species or place."
    />
  );
}
