@echo off
rem Starts Insidelift; builds it first if it has not been built yet.
setlocal
set "HERE=%~dp0"
set "LIB=%HERE%target\lib"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo insidelift: no Java found; install a JDK 17 or newer, or set JAVA_HOME 1>&2
  exit /b 1
)
if not exist "%LIB%\complete" (
  echo Building Insidelift once; this takes a minute or two ... 1>&2
  if not exist "%HERE%target" mkdir "%HERE%target"
  pushd "%HERE%.."
  call mvn -B -q -Dmaven.test.skip=true package > "%HERE%target\first-build.log" 2>&1 <nul
  if errorlevel 1 (
    popd
    echo insidelift: the build failed; see "%HERE%target\first-build.log" 1>&2
    exit /b 1
  )
  popd
)
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx256m -cp "%LIB%\*" insidelift.console.Insidelift %*
exit /b %errorlevel%
