# Installs into a folder, moves it, and asks the program there: it must find its tables beside itself, and know nothing of where it was built.
file(REMOVE_RECURSE ${TO})
execute_process(COMMAND ${CMAKE_COMMAND} --install ${BUILD} --prefix ${TO}/first OUTPUT_QUIET COMMAND_ERROR_IS_FATAL ANY)
file(RENAME ${TO}/first ${TO}/moved)
foreach(name bin/heatkeep bin/heatkeep-desk share/heatkeep/schema/files share/heatkeep/schema/roles.sql share/heatkeep/reference/grades.csv
        share/man/man1/heatkeep.1 share/man/man1/heatkeep-saw-cut.1 share/man/man1/heatkeep-desk.1 share/man/man5/heatkeep-files.5 share/bash-completion/completions/heatkeep
        share/zsh/vendor-completions/_heatkeep share/bash-completion/completions/heatkeep-desk share/zsh/vendor-completions/_heatkeep-desk share/applications/heatkeep-desk.desktop share/icons/hicolor/scalable/apps/heatkeep-desk.svg
        share/doc/heatkeep/copyright share/heatkeep/scenario/opening.csv share/doc/heatkeep/first_day/README.md)
  if(NOT EXISTS ${TO}/moved/${name})
    message(FATAL_ERROR "${name} is not installed")
  endif()
endforeach()

# the SQL is whole: every file that the list and the folder of the sources have
file(GLOB_RECURSE sources RELATIVE ${SOURCE}/schema ${SOURCE}/schema/*.sql)
foreach(name ${sources})
  if(NOT EXISTS ${TO}/moved/share/heatkeep/schema/${name})
    message(FATAL_ERROR "schema/${name} is not installed")
  endif()
endforeach()

# a sanitizer or a debugger may know the sources; what people run may not
file(STRINGS ${BUILD}/CMakeCache.txt type REGEX "^CMAKE_BUILD_TYPE:")
if(type MATCHES "Release$")
  foreach(program heatkeep heatkeep-desk)
    file(STRINGS ${TO}/moved/bin/${program} told REGEX "${SOURCE}")
    if(told)
      message(FATAL_ERROR "${program} says where it was built: ${told}")
    endif()
  endforeach()
endif()

execute_process(COMMAND ${TO}/moved/bin/heatkeep heat check --grade 4140 --analysis "C=0.41 Mn=0.86" OUTPUT_VARIABLE said ERROR_VARIABLE wrong RESULT_VARIABLE code)
if(NOT said MATCHES "0.41")
  message(FATAL_ERROR "the installed program does not find its tables (exit ${code}): ${said}${wrong}")
endif()
