import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';

export default function NoSuchJob() {
  return (
    <Page title="No such job" back={{ href: '/jobs', words: 'Jobs' }}>
      <Empty
        title="This job is not in the book."
        toDo="The link may be from another book. Look for the job in the list."
      >
        <LinkKey href="/jobs?all=1">All jobs</LinkKey>
      </Empty>
    </Page>
  );
}
