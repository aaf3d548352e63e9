import { Lost } from '@/app/_ui/lost';

export const metadata = { title: 'Not in this book' };

export default function NotFound() {
  return (
    <main>
      <Lost />
    </main>
  );
}
