import type { Course } from '../../../src/training/packages/course.ts'

/** An invented course with what is awkward in it: signs of XML, a blank in a file name, a lesson that asks nothing. */
export const course: Course = {
  id: 'demo-1/0001/first-week/en',
  title: 'First week <at> the "washer" & more',
  description: 'What a new operator learns first',
  language: 'en',
  lessons: [
    { id: 'machine-tour', title: 'A walk round the machine', description: 'Where everything is', launch: 'launch/machine-tour.html' },
    { id: 'stop_and.lock', title: 'Stop & lock', description: 'How to stop it', launch: 'launch/stop-and-lock.html', passPercent: 80 },
  ],
  files: ['assets/site.css', 'images/way of a crate.svg', 'launch/machine-tour.html', 'launch/stop-and-lock.html', 'lessons/machine-tour.html'],
}
