' Does one job after the other. A job is a file of that name in the folder, which is deleted when all
' of it is done; what went wrong stands in a file beside it. Ends after ten minutes without a job.
Sub Serve(folder As String)
  job = folder & "job.txt"
  seen = Timer()
  Do While Abs(Timer - seen) < 600
    If FileExists(job) Then
      Attempt(job, folder & "failed.txt")
      Kill(job)
      seen = Timer()
    End If
    Wait 10
  Loop
  StarDesktop.terminate()
End Sub

Sub Attempt(job As String, failed As String)
  On Error GoTo Wrong
  Calculate(job)
  Exit Sub
Wrong:
  said = Error$ & " in line " & Erl
  number = FreeFile
  Open failed For Output As #number
  Print #number, said
  Close #number
End Sub

' Types inputs into a workbook, calculates, and writes the values of every sheet, again and again.
' Each line of the file job is a command and its words, parted by tabs.
Sub Calculate(job As String)
  files = createUnoService("com.sun.star.ucb.SimpleFileAccess")
  lines = createUnoService("com.sun.star.io.TextInputStream")
  lines.setInputStream(files.openFileRead(job))
  lines.setEncoding("UTF-8")
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  Dim filter(1) As New com.sun.star.beans.PropertyValue
  filter(0).Name = "FilterName"
  filter(1).Name = "FilterOptions"
  Do While Not lines.isEOF()
    words = Split(lines.readLine(), Chr(9))
    Select Case words(0)
      Case "open"
        workbook = StarDesktop.loadComponentFromURL(words(1), "_blank", 0, hidden())
        workbook.enableAutomaticCalculation(False)
        fresh = True
      Case "number"
        Cell(workbook, words(1)).setValue(CDbl(words(2)))
      Case "text"
        Cell(workbook, words(1)).setString(words(2))
      Case "blank"
        Cell(workbook, words(1)).setFormula("")
      Case "save"
        If fresh Then workbook.calculateAll() Else workbook.calculate()
        fresh = False
        ' Looks that hang on values are settled only while it calculates by itself.
        workbook.enableAutomaticCalculation(True)
        filter(0).Value = words(2)
        filter(1).Value = words(3)
        workbook.storeToURL(words(1), filter())
        workbook.enableAutomaticCalculation(False)
      Case "close"
        workbook.close(True)
    End Select
  Loop
  lines.closeInput()
End Sub

Function Cell(workbook, name As String)
  Cell = workbook.NamedRanges.getByName(name).getReferredCells().getCellByPosition(0, 0)
End Function
