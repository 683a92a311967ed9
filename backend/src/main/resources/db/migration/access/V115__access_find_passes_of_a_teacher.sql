-- What goes with a teacher is found without reading every pass.
create index pass_of_teacher on pass (teacher_id);
