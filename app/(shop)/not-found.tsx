import { Lost } from '@/app/_ui/lost';

/** Inside the frame, so that the way to the other pages stays. */
export default function ShopNotFound() {
  return <Lost />;
}
