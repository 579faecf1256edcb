# What Debian wants compressed is compressed in the tree that becomes a package; `cmake --install` leaves it as it is.
file(GLOB_RECURSE texts ${CPACK_TEMPORARY_DIRECTORY}/*/usr/share/man/*.[15] ${CPACK_TEMPORARY_DIRECTORY}/*/usr/share/doc/*/changelog)
if(NOT texts)
  message(FATAL_ERROR "no man page is in ${CPACK_TEMPORARY_DIRECTORY}")
endif()
execute_process(COMMAND gzip -9nf ${texts} COMMAND_ERROR_IS_FATAL ANY)
